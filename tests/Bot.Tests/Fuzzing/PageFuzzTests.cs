using DxAssistant.Bot.Tests.Server.Workbench;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Editing;
using DxAssistant.Server.Content;
using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>Whatever stands on a page, the compiler says what is wrong with it, and the page can be shown.</summary>
public sealed class PageFuzzTests(ITestOutputHelper output)
{
    [Fact]
    public async Task Compile_AnyPage_GivesAResult()
    {
        using var files = new TinyPages();
        ContentFolder folder = ContentFolderReader.Read(files.Folder);
        await new FuzzRun(output, "pages", few: 200).RunAsync(
            folder.Files.Where((_, at) => at % 3 == 0).Select(file => $"{file.Path}\n{file.Text}"), Make, input => Task.FromResult(Compile(folder, input)));
    }

    // The first line, the path, stays: only what stands on a page is an author's.
    private static string Make(Random random, IReadOnlyList<string> pool)
    {
        string page = pool[random.Next(pool.Count)];
        int end = page.IndexOf('\n', StringComparison.Ordinal) + 1;
        string other = pool[random.Next(pool.Count)];
        return page[..end] + TextChanges.Make(random, [page[end..], page[end..], other[(other.IndexOf('\n', StringComparison.Ordinal) + 1)..]]);
    }

    private static string Compile(ContentFolder folder, string input)
    {
        int end = input.IndexOf('\n', StringComparison.Ordinal);
        string text = input[(end + 1)..];
        CompileResult result = ContentCompiler.Compile(folder.With(new ContentFile(input[..end], text)));
        Assert.Equal(result.IsClean, result.Library is not null);
        PageRead.IsTame(PageHtml.Of(text));
        return string.Join(' ', result.Diagnostics.Select(found => found.Name).Distinct(StringComparer.Ordinal));
    }
}
