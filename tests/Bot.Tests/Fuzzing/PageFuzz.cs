using DxAssistant.Bot.Tests.Server.Workbench;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Editing;
using DxAssistant.Server.Content;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>Whatever stands on a page, the compiler says what is wrong with it, and the page can be shown.</summary>
internal sealed class PageFuzz : IFuzzPart
{
    private readonly TinyPages files = new();
    private readonly ContentFolder folder;

    public PageFuzz() => folder = ContentFolderReader.Read(files.Folder);

    public string Name => "pages";

    public int Few => 200;

    public Task<IEnumerable<string>> BeginAsync() =>
        Task.FromResult(folder.Files.Where((_, at) => at % 3 == 0).Select(file => $"{file.Path}\n{file.Text}"));

    // The first line, the path, stays: only what stands on a page is an author's.
    public string Change(Random random, IReadOnlyList<string> pool)
    {
        string page = pool[random.Next(pool.Count)], other = pool[random.Next(pool.Count)];
        return page[..TextFrom(page)]
            + TextChanges.Make(random, [page[TextFrom(page)..], page[TextFrom(page)..], other[TextFrom(other)..]]);
    }

    public Task<string> TakeAsync(string input)
    {
        string text = input[TextFrom(input)..];
        CompileResult result =
            ContentCompiler.Compile(folder.With(new ContentFile(input[..(TextFrom(input) - 1)], text)));
        Assert.Equal(result.IsClean, result.Library is not null);
        PageRead.IsTame(PageHtml.Of(text));
        return Task.FromResult(
            string.Join(' ', result.Diagnostics.Select(found => found.Name).Distinct(StringComparer.Ordinal)));
    }

    public ValueTask DisposeAsync()
    {
        files.Dispose();
        return ValueTask.CompletedTask;
    }

    private static int TextFrom(string page) => page.IndexOf('\n', StringComparison.Ordinal) + 1;
}
