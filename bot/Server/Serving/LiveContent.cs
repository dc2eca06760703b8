using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Incremental;
using DxAssistant.Server.Content;

namespace DxAssistant.Server.Serving;

/// <summary>The content of a folder, compiled; once it is watched, recompiled when a page changes, the last good
/// version kept until then.</summary>
internal sealed class LiveContent : IDisposable
{
    // Editors write a file in several steps; one compile follows the last of them.
    private static readonly TimeSpan Settle = TimeSpan.FromMilliseconds(300);

    private readonly string folder;
    private readonly Func<string, ContentFolder> read;
    private readonly TextWriter notes;
    private readonly Lock gate = new();
    private PageWatch? watch;
    private ITimer? settled;
    private readonly IncrementalCompiler compiler;
    private volatile InUse current;

    private LiveContent(string folder, Func<string, ContentFolder> read, TextWriter notes, IncrementalCompiler compiler, InUse current)
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
    internal static LiveContent? Open(string folder, TextWriter notes, Func<string, ContentFolder> read)
    {
        var compiler = new IncrementalCompiler();
        return Compile(folder, read, notes, compiler) is { } first ? new LiveContent(folder, read, notes, compiler, first) : null;
    }

    /// <summary>Compiles again whenever a page changes.</summary>
    public void Watch(TimeProvider clock)
    {
        settled = clock.CreateTimer(_ => Reload(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        watch = new PageWatch(folder, () => settled.Change(Settle, Timeout.InfiniteTimeSpan), notes);
        watch.Begin();
    }

    /// <summary>Compiles now; a version with errors changes nothing.</summary>
    public void Reload()
    {
        lock (gate)
        {
            try
            {
                if (Compile(folder, read, notes, compiler) is not { } next)
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

    private static InUse? Compile(string folder, Func<string, ContentFolder> read, TextWriter notes, IncrementalCompiler compiler)
    {
        var pages = read(folder);
        var result = compiler.Compile(pages);
        foreach (var diagnostic in result.Diagnostics) notes.Write(
            DiagnosticText.Render(diagnostic, pages, folder + "/") + "\n");
        return result.Library is { } library && result.IsClean ? Use(library, pages, notes) : null;
    }

    private static InUse? Use(Library library, ContentFolder pages, TextWriter notes)
    {
        try
        {
            return InUse.Of(library, pages);
        }
        catch (ArgumentException error)
        {
            // The pages are sound each by itself, and the conversation needs more than they give.
            notes.WriteLine(error.Message.Split(" (Parameter")[0]);
            return null;
        }
    }
}
