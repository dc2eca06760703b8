using System.Collections.Immutable;
using System.Text;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Incremental;
using DxAssistant.Server.Content;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>
/// The folder of the pages as it stands, and what it would be with pages that are being written. Only reads it.
/// </summary>
/// <param name="root">The folder; null where there is none.</param>
internal sealed class PageDesk(string? root) : IDisposable
{
    private readonly PageShelf shelf = new();
    private readonly IncrementalCompiler standing = new();
    private readonly IncrementalCompiler trying = new();
    private readonly SemaphoreSlim turn = new(1);
    private Tried? now;

    /// <summary>Whether there are pages to write in.</summary>
    public bool IsOpen => root is not null && Directory.Exists(root);

    /// <summary>The pages as they stand, and what is wrong with them.</summary>
    public Task<Tried> StandsAsync(CancellationToken cancel) => InTurnAsync(Standing, cancel);

    /// <summary>The pages with others in the place of some.</summary>
    /// <param name="pages">Their paths are those of pages that are there or may be.</param>
    public Task<Tried> TryAsync(IReadOnlyCollection<PageInHand> pages, CancellationToken cancel) => InTurnAsync(
        () =>
        {
            ContentFolder folder = With(Standing().Folder, pages);
            return new Tried(folder, trying.Compile(folder), now!.Result);
        }, cancel);

    /// <summary>A page as its file is: line ends and byte order mark kept.</summary>
    /// <returns>Null when there is no such file, or its bytes are no UTF-8.</returns>
    public string? Raw(string path)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(
                File.ReadAllBytes(Path.Combine(root!, path)));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return null;
        }
    }

    public void Dispose() => turn.Dispose();

    private async Task<Tried> InTurnAsync(Func<Tried> work, CancellationToken cancel)
    {
        await turn.WaitAsync(cancel);
        try
        {
            return await Task.Run(work, CancellationToken.None);
        }
        finally
        {
            turn.Release();
        }
    }

    private Tried Standing()
    {
        ContentFolder folder = shelf.Read(root!);
        if (now is not null && now.Folder.Files.SequenceEqual(folder.Files)) return now;
        CompileResult result = standing.Compile(folder);
        return now = new Tried(folder, result, result);
    }

    private static ContentFolder With(ContentFolder folder, IReadOnlyCollection<PageInHand> pages)
    {
        HashSet<string> written = [.. pages.Select(page => page.Path)];
        return ContentFolder.Of([.. folder.Files.Where(file => !written.Contains(file.Path)),
            .. pages.Where(page => page.Text is not null).Select(page => new ContentFile(page.Path, page.Text!))]);
    }

    /// <param name="Folder">The pages.</param>
    /// <param name="Before">What was found in the pages as they stand.</param>
    internal sealed record Tried(ContentFolder Folder, CompileResult Result, CompileResult Before)
    {
        /// <summary>What is wrong and was not before.</summary>
        /// <param name="paths">Pages that are being written: all that is wrong with them counts.</param>
        public ImmutableArray<Diagnostic> Found(IReadOnlyCollection<string> paths)
        {
            HashSet<Diagnostic> known = [.. Before.Diagnostics.Where(found => !paths.Contains(found.At.Path))];
            return [.. Result.Diagnostics.Where(found => !known.Contains(found))];
        }
    }
}
