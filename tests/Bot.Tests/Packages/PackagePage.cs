using System.Text;

namespace DxAssistant.Bot.Tests.Packages;

/// <summary>The page that names every package, with its licence and why it is there.</summary>
internal sealed class PackagePage
{
    public const string NoReason = "?";
    private const string Comes = "comes with ";
    private const string Tables = "## What goes out";

    private readonly string head;
    private readonly Dictionary<string, (string Licence, string Why)> rows;

    private PackagePage(string head, Dictionary<string, (string, string)> rows) =>
        (this.head, this.rows) = (head, rows);

    public static string File { get; } = Repository.PathOf("bot", "Server", "PACKAGES.md");

    public static PackagePage Read()
    {
        string text = System.IO.File.ReadAllText(File).ReplaceLineEndings("\n");
        var rows = text.Split('\n').Select(line => line.Split('|', StringSplitOptions.TrimEntries))
            .Where(cells => cells.Length == 6)
            .GroupBy(cells => cells[1]).ToDictionary(same => same.Key, same => (same.First()[3], same.First()[4]));
        return new PackagePage(text[..text.IndexOf(Tables, StringComparison.Ordinal)], rows);
    }

    /// <summary>
    /// The page for these packages: the licence that a package does not state itself, and the reason of one that is
    /// asked for, are kept from the page as it stands.
    /// </summary>
    public string For(IReadOnlyCollection<RestoredPackage> packages)
    {
        var text = new StringBuilder(head).Append(Tables).Append("\n\n");
        Table(text, packages.Where(package => package.GoesOut));
        text.Append("\n## Builds and tests alone\n\n");
        Table(text, packages.Where(package => !package.GoesOut));
        return text.ToString();
    }

    /// <summary>The licence as the page will state it.</summary>
    public string LicenceOf(RestoredPackage package) =>
        package.Licence ?? rows.GetValueOrDefault(package.Name).Licence ?? "not known";

    /// <summary>Why the package is there; <see cref="NoReason"/> where nobody said it yet.</summary>
    public string WhyOf(RestoredPackage package)
    {
        if (!package.IsAsked) return Comes + string.Join(", ", package.Parents);
        string? kept = rows.GetValueOrDefault(package.Name).Why;
        return string.IsNullOrEmpty(kept) || kept.StartsWith(Comes, StringComparison.Ordinal) ? NoReason : kept;
    }

    private void Table(StringBuilder text, IEnumerable<RestoredPackage> packages)
    {
        text.Append("| package | version | licence | why |\n|---|---|---|---|\n");
        foreach (var package in packages)
            text.Append($"| {package.Name} | {package.Version} | {LicenceOf(package)} | {WhyOf(package)} |\n");
    }
}
