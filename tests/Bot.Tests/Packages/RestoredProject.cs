using System.Text.Json;

namespace DxAssistant.Bot.Tests.Packages;

/// <summary>What NuGet restored for one project: the file project.assets.json that every build leaves.</summary>
internal sealed class RestoredProject
{
    // What goes out is the server and the core in the browser.
    private static readonly HashSet<string> Out = ["Server", "Browser"];

    private static readonly string[] Folders = ["graph", "knowledge", "bot", "tests"];

    private readonly JsonElement assets;
    private readonly string name;

    private RestoredProject(string name, JsonElement assets) => (this.name, this.assets) = (name, assets);

    /// <summary>All projects of the repository that were restored.</summary>
    public static IReadOnlyList<RestoredProject> All() =>
        [.. Files().Where(file => File.Exists(AssetsOf(file))).Select(file =>
            new RestoredProject(Path.GetFileNameWithoutExtension(file),
                JsonDocument.Parse(File.ReadAllText(AssetsOf(file))).RootElement))];

    /// <summary>Whether these are all there are.</summary>
    public static bool IsWhole(IReadOnlyCollection<RestoredProject> projects) => projects.Count == Files().Count();

    /// <summary>The packages of the project.</summary>
    public IEnumerable<RestoredPackage> Packages() => Restored().Concat(Downloaded());

    private IEnumerable<RestoredPackage> Restored() =>
        from library in assets.GetProperty("libraries").EnumerateObject()
        where library.Value.GetProperty("type").GetString() == "package"
        let parts = library.Name.Split('/')
        let asked = Asked(parts[0])
        select new RestoredPackage(
            parts[0], parts[1], PackageLicence.Of(Caches, parts[0], parts[1]), Out.Contains(name) && asked != "tool",
            asked is not null, [.. Parents(parts[0])]);

    // Packs that the SDK fetches beside the graph; the one for the browser goes out.
    private IEnumerable<RestoredPackage> Downloaded() =>
        from framework in Frameworks
        where framework.TryGetProperty("downloadDependencies", out _)
        from pack in framework.GetProperty("downloadDependencies").EnumerateArray()
        let packed = pack.GetProperty("name").GetString()!
        let version = pack.GetProperty("version").GetString()!.Trim('[', ']').Split(',')[0]
        select new RestoredPackage(packed, version, PackageLicence.Of(Caches, packed, version), Out.Contains(name),
            true, []);

    private IEnumerable<string> Caches =>
        assets.GetProperty("packageFolders").EnumerateObject().Select(folder => folder.Name);

    private IEnumerable<JsonElement> Frameworks =>
        assets.GetProperty("project").GetProperty("frameworks").EnumerateObject().Select(framework => framework.Value);

    // Null when the project does not ask for it; "tool" when it only helps to build.
    private string? Asked(string package) => Frameworks
        .Where(framework => framework.TryGetProperty("dependencies", out _))
        .SelectMany(framework => framework.GetProperty("dependencies").EnumerateObject())
        .Where(asked => asked.Name == package)
        .Select(asked => asked.Value.TryGetProperty("autoReferenced", out _)
            || asked.Value.TryGetProperty("suppressParent", out _) ? "tool" : "asked")
        .FirstOrDefault();

    private IEnumerable<string> Parents(string package) =>
        from target in assets.GetProperty("targets").EnumerateObject()
        from library in target.Value.EnumerateObject()
        where library.Value.GetProperty("type").GetString() == "package"
            && library.Value.TryGetProperty("dependencies", out var needs)
            && needs.TryGetProperty(package, out _)
        select library.Name.Split('/')[0];

    private static IEnumerable<string> Files() => Folders.SelectMany(folder =>
        Directory.EnumerateFiles(Repository.PathOf(folder), "*.csproj", SearchOption.AllDirectories));

    private static string AssetsOf(string project) =>
        Path.Combine(Path.GetDirectoryName(project)!, "obj", "project.assets.json");
}
