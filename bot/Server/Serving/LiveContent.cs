using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Incremental;
using DxAssistant.Server.Content;

namespace DxAssistant.Server.Serving;

/// <summary>The content of a folder, compiled; once it is watched, recompiled when a page changes, the last good
/// version kept until then.</summary>
internal sealed class LiveContent : IDisposable
{
    private readonly string folder;
    private readonly PageReading read;
    private readonly TextWriter notes;
    private readonly Lock gate = new();
    private PageFollower? follower;
    private int made;
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
        return Compile(folder, null, read, notes, compiler, isFirst: true) is { } first
            ? new LiveContent(folder, read, notes, compiler, first)
            : null;
    }

    /// <summary>Compiles again whenever a page changes.</summary>
    public void Watch(TimeProvider clock) => follower = new PageFollower(folder, Read, clock, notes);

    /// <summary>Compiles now; a version with errors changes nothing.</summary>
    public void Reload() => Read(null)();

    // Pages that could not be read are read again at the next change.
    private Action Read(IReadOnlyCollection<string>? paths)
    {
        lock (gate)
        {
            int mine = ++made;
            var told = new StringWriter();
            try
            {
                InUse? next = Compile(folder, paths, read, told, compiler, isFirst: false);
                return () => Use(next, mine, told);
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                follower?.Again();
                return () => notes.WriteLine(
                    $"The pages could not be read ({error.Message}): going on with version {current.Version}.");
            }
        }
    }

    // What was compiled again meanwhile is not used.
    private void Use(InUse? next, int mine, StringWriter told)
    {
        lock (gate)
        {
            if (mine != made) return;
            notes.Write(told);
            if (next is null) notes.WriteLine($"The pages have errors: going on with version {current.Version}.");
            if (next is null || next.Version == current.Version) return;
            current = next;
            next.GetReady();
            notes.WriteLine($"The pages changed: now version {next.Version}.");
        }
    }

    public void Dispose() => follower?.Dispose();

    private static InUse? Compile(
        string folder, IReadOnlyCollection<string>? paths, PageReading read, TextWriter notes,
        IncrementalCompiler compiler, bool isFirst)
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
