using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Incremental;
using DxAssistant.Server.Content;

namespace DxAssistant.Server.Serving;

/// <summary>The content of a folder, compiled; once it is watched, recompiled when a page changes, the last good
/// version kept until then.</summary>
internal sealed class LiveContent : IDisposable
{
    // Editors write a file in several steps; one compile follows the last of them.
    private static readonly TimeSpan Settle = TimeSpan.FromMilliseconds(50);

    private readonly string folder;
    private readonly PageReading read;
    private readonly TextWriter notes;
    private readonly ChangedPaths changed = new();
    private readonly Lock gate = new();
    private PageWatch? watch;
    private ITimer? settled;
    private readonly IncrementalCompiler compiler;
    private volatile InUse current;

    private LiveContent(string folder, PageReading read, TextWriter notes, IncrementalCompiler compiler, InUse current)
    {
        this.compiler = compiler;
        this.folder = folder;
        this.read = read;
        this.notes = notes;
        this.current = current;
    }

    /// <summary>The folder of the pages.</summary>
    public string Folder => folder;

    /// <summary>What answers now.</summary>
    public InUse Current => current;

    /// <summary>Compiles a folder; says what is wrong with it on <paramref name="notes"/>.</summary>
    /// <returns>Null when the content has errors.</returns>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static LiveContent? Open(string folder, TextWriter notes) => Open(folder, notes, new PageShelf().Read);

    /// <inheritdoc cref="Open(string, TextWriter)"/>
    internal static LiveContent? Open(string folder, TextWriter notes, PageReading read)
    {
        var compiler = new IncrementalCompiler();
        return Compile(folder, null, read, notes, compiler, isFirst: true) is { } first ? new LiveContent(folder, read, notes, compiler, first) : null;
    }

    /// <summary>Compiles again whenever a page changes.</summary>
    public void Watch(TimeProvider clock)
    {
        settled = clock.CreateTimer(_ => Reload(changed.Take()), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        watch = new PageWatch(folder, Noticed, notes);
        watch.Begin();
    }

    private void Noticed(string? path)
    {
        changed.Add(path);
        settled?.Change(Settle, Timeout.InfiniteTimeSpan);
    }

    /// <summary>Compiles now; a version with errors changes nothing.</summary>
    public void Reload() => Reload(null);

    // Pages that could not be read are read again at the next change.
    private void Reload(IReadOnlyCollection<string>? paths)
    {
        lock (gate)
        {
            try
            {
                if (Compile(folder, paths, read, notes, compiler, isFirst: false) is not { } next)
                {
                    notes.WriteLine($"The pages have errors: going on with version {current.Version}.");
                }
                else if (next.Version != current.Version)
                {
                    current = next;
                    notes.WriteLine($"The pages changed: now version {next.Version}.");
                }
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                changed.Add(null);
                notes.WriteLine(
                    $"The pages could not be read ({error.Message}): going on with version {current.Version}.");
            }
        }
    }

    public void Dispose()
    {
        watch?.Dispose();
        settled?.Dispose();
    }

    private static InUse? Compile(
        string folder, IReadOnlyCollection<string>? paths, PageReading read, TextWriter notes, IncrementalCompiler compiler, bool isFirst)
    {
        var pages = read(folder, paths);
        var result = compiler.Compile(pages);
        foreach (var diagnostic in result.Diagnostics) notes.Write(
            DiagnosticText.Render(diagnostic, pages, folder + "/") + "\n");
        return result.Library is { } library && result.IsClean ? Use(library, pages, notes, isFirst) : null;
    }

    private static InUse? Use(Library library, ContentFolder pages, TextWriter notes, bool isFirst)
    {
        try
        {
            return InUse.Of(library, pages, late: !isFirst);
        }
        catch (ArgumentException error)
        {
            // The pages are sound each by itself, and the conversation needs more than they give.
            notes.WriteLine(error.Message.Split(" (Parameter")[0]);
            return null;
        }
    }
}
