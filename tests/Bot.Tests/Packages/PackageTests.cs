using System.Collections.Immutable;

namespace DxAssistant.Bot.Tests.Packages;

/// <summary>What is not our own is named, with version, licence and reason, and nothing comes in unseen.</summary>
/// <remarks>
/// After a wanted change <c>DX_UPDATE=1</c> writes the page anew; the reason of what a project asks for is written by
/// hand.
/// </remarks>
public sealed class PackageTests
{
    private static readonly HashSet<string> Allowed =
        ["MIT", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "PostgreSQL", "MS-PL", "public domain"];

    private static readonly string[] Code = ["graph", "knowledge", "bot/Cases", "bot/Conversation", "bot/Server"];

    // Never handed on, so what they ask of whoever hands them on does not bind.
    private static readonly HashSet<string> AllowedHere = [.. Allowed, "MPL-2.0", "Microsoft .NET Library"];

    private static readonly IReadOnlyList<RestoredProject> Projects = RestoredProject.All();
    private static readonly ImmutableArray<RestoredPackage> Packages = Restored();

    [Fact]
    public void Page_NamesEveryPackage_WithVersionLicenceAndReason()
    {
        string made = PackagePage.Read().For(Packages);
        if (Environment.GetEnvironmentVariable("DX_UPDATE") == "1") File.WriteAllText(PackagePage.File, made);

        string[] stated = File.ReadAllLines(PackagePage.File);
        string[] restored = made.Split('\n');
        Assert.Empty(restored.Except(stated));
        // Where not every project was restored, the page knows more than can be seen.
        if (RestoredProject.IsWhole(Projects)) Assert.Empty(stated.Except(restored));
    }

    [Fact]
    public void Package_AskedFor_HasAReason()
    {
        var page = PackagePage.Read();
        Assert.Empty(Packages.Where(package => page.WhyOf(package) == PackagePage.NoReason)
            .Select(package => package.Name));
    }

    [Fact]
    public void Package_Licence_IsAllowed()
    {
        var page = PackagePage.Read();
        Assert.Empty(
            Packages.Where(package => !(package.GoesOut ? Allowed : AllowedHere).Contains(page.LicenceOf(package)))
            .Select(package => $"{package.Name}: {page.LicenceOf(package)}"));
    }

    [Fact]
    public void Restored_HoldsTheServerAndTheBrowser() => Assert.Subset(
        Packages.Where(package => package.GoesOut).Select(package => package.Name).ToHashSet(),
        new HashSet<string> { "Markdig", "Npgsql", "SQLite", "Microsoft.Bot.Schema", "Lucene.Net" });

    // Nothing of others lies among the files of the pages: what is served from there is the project's own.
    [Fact]
    public void Pages_HoldNoScriptOfOthers()
    {
        foreach (string file in Directory.EnumerateFiles(Repository.PathOf("bot", "Server", "wwwroot"), "*.js",
            SearchOption.AllDirectories))
            Assert.DoesNotMatch("(?i)copyright|@licen[sc]e|sourceMappingURL|[^\\n]{1000}", File.ReadAllText(file));
    }

    // A script beside the code is somebody else's, and brings its licence.
    [Fact]
    public void Scripts_OfOthers_AreNamedAndBringTheirLicence()
    {
        string page = File.ReadAllText(PackagePage.File);
        var folders = Code
            .SelectMany(part => Directory.EnumerateFiles(Repository.PathOf(part), "*.js", SearchOption.AllDirectories))
            .Select(file => Path.GetRelativePath(Repository.Root, Path.GetDirectoryName(file)!).Replace('\\', '/'))
            .Where(folder => !folder.Split('/').Any(part => part is "bin" or "obj" or "wwwroot" or "engine"))
            .Distinct();
        Assert.All(folders, folder =>
        {
            Assert.Contains($"| {folder} |", page, StringComparison.Ordinal);
            Assert.True(File.Exists(Repository.PathOf(folder, "LICENSE.txt")), folder);
        });
    }

    private static ImmutableArray<RestoredPackage> Restored() =>
    [
        .. Projects.SelectMany(project => project.Packages())
            .GroupBy(package => (package.Name, package.Version)).Select(Joined)
            .OrderBy(package => package.Name, StringComparer.Ordinal)
            .ThenBy(package => package.Version, StringComparer.Ordinal),
    ];

    private static RestoredPackage Joined(IEnumerable<RestoredPackage> same) => same.First() with
    {
        GoesOut = same.Any(package => package.GoesOut),
        IsAsked = same.Any(package => package.IsAsked),
        Parents = [.. same.SelectMany(package => package.Parents).Distinct().Order(StringComparer.Ordinal)],
    };
}
