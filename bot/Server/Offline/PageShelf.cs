using DxAssistant.Cases;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Offline;

/// <summary>
/// The versions of the content that were handed out, so that what was worked out on them can be checked when it
/// comes back.
/// </summary>
/// <param name="folder">Where packs are kept over a restart; null for as long as the program runs.</param>
internal sealed class PageShelf(Func<InUse> inUse, string? folder)
{
    private const int MostCompiled = 4;

    private readonly Lock gate = new();
    private readonly List<(string Version, IResponder Core)> compiled = [];

    /// <summary>Keeps the pages in use, because somebody takes them along.</summary>
    public void Keep(InUse handedOut)
    {
        if (handedOut.Packed is not { } packed) return;
        lock (gate) Remember(handedOut.Version, handedOut.Responder);
        if (folder is null || File.Exists(PathOf(handedOut.Version))) return;
        Directory.CreateDirectory(folder);
        string unfinished = PathOf(handedOut.Version) + "." + Environment.ProcessId;
        File.WriteAllBytes(unfinished, ContentPack.Write(packed.Folder));
        File.Move(unfinished, PathOf(handedOut.Version), overwrite: true);
    }

    /// <summary>The core on a version of the content; null when it was never handed out here.</summary>
    public IResponder? Find(string version)
    {
        var now = inUse();
        if (now.Version == version) return now.Responder;
        lock (gate)
        {
            int place = compiled.FindIndex(kept => kept.Version == version);
            return place >= 0 ? compiled[place].Core : Fetch(version);
        }
    }

    private LibraryResponder? Fetch(string version)
    {
        if (folder is null || !CaseId.IsWellFormed(version) || !File.Exists(PathOf(version))) return null;
        Library library = ContentCompiler.Rebuild(ContentPack.Read(File.ReadAllBytes(PathOf(version))));
        if (library.Version != version) return null;
        var core = new LibraryResponder(library);
        Remember(version, core);
        return core;
    }

    private void Remember(string version, IResponder core)
    {
        if (compiled.Any(kept => kept.Version == version)) return;
        compiled.Add((version, core));
        if (compiled.Count > MostCompiled) compiled.RemoveAt(0);
    }

    private string PathOf(string version) => Path.Combine(folder!, version + ".pages");
}
