using DxAssistant.Knowledge.Content;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>
/// A folder of pages of any size without a diagnostic: the small folder of the tests, with more faults, each two
/// with a symptom, a check and repairs of their own: as in a real library no check is about more than a few faults.
/// </summary>
internal static class GrowingFolder
{
    private static readonly string[] Grown =
    [
        "faults/fan-plug-loose.md", "faults/fan-motor-failed.md", "checks/fan-plug.md", "repairs/seat-plug.md",
        "repairs/replace-fan-motor.md",
        "symptoms/fan-not-turning.md",
    ];

    public static ContentFolder Of(int pages)
    {
        Dictionary<string, string> texts = Tiny();
        int copies = (pages - texts.Count) / Grown.Length;
        for (int i = 0; i < copies; i++)
            foreach (string path in Grown)
                texts[path.Replace(".md", $"-{i}.md", StringComparison.Ordinal)] = Copy(texts[path], i, copies);
        texts["index.md"] += string.Concat(Enumerable.Range(0, copies).Where(IsFirst).Select(i =>
            $"- [Not turning](symptoms/fan-not-turning-{i}.md)\n"));
        return ContentFolder.Of(texts.Select(page => new ContentFile(page.Key, page.Value)));
    }

    /// <summary>
    /// The folder with one page edited: a sentence, a number of minutes, a likelihood, a title, in turn.
    /// </summary>
    public static ContentFolder Edited(ContentFolder folder, int edit)
    {
        string path = $"checks/fan-plug-{edit}.md";
        return ContentFolder.Of(
            folder.Files.Select(file => file.Path != path ? file : file with { Text = Edited(file.Text, edit) }));
    }

    private static string Edited(string text, int edit) => (edit % 4) switch
    {
        0 => text.Replace("Press it home.", "Push it home.", StringComparison.Ordinal),
        1 => text.Replace("minutes: 3", "minutes: 4", StringComparison.Ordinal),
        2 => text.Replace("0.97 | 0.03", "0.96 | 0.04", StringComparison.Ordinal),
        _ => text.Replace("# Indoor fan plug", "# Plug of the indoor fan", StringComparison.Ordinal),
    };

    // The index would be longer than a page may be: it links to each fiftieth symptom, and that on to the next.
    private static bool IsFirst(int i) => i % 50 == 0;

    // The links to the next symptom are put in last: they are not of this copy.
    private static string Copy(string text, int i, int copies) => text
        .Replace("fan-plug-loose", $"fan-plug-loose-{i}", StringComparison.Ordinal)
        .Replace("id: fan-plug\n", $"id: fan-plug-{i}\n", StringComparison.Ordinal)
        .Replace("seat-plug", $"seat-plug-{i}", StringComparison.Ordinal)
        .Replace("fan-motor-failed", $"fan-motor-failed-{i}", StringComparison.Ordinal)
        .Replace("replace-fan-motor", $"replace-fan-motor-{i}", StringComparison.Ordinal)
        .Replace("fan-not-turning", $"fan-not-turning-{i}", StringComparison.Ordinal)
        .Replace("No air comes out.", $"No air comes out of [this](../checks/fan-plug-{i}.md)"
            + (IsFirst(i + 1) || i + 1 == copies ? "." : $", nor of [the next](fan-not-turning-{i + 1}.md)."),
            StringComparison.Ordinal);

    /// <summary>The pages of the small folder, by path.</summary>
    public static Dictionary<string, string> Tiny()
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "DxAssistant.sln"))) root = root.Parent!;
        string tiny = Path.Combine(root.FullName, "tests", "Knowledge.Tests", "Content", "Tiny");
        return Directory.EnumerateFiles(tiny, "*", SearchOption.AllDirectories)
            .ToDictionary(file => Path.GetRelativePath(tiny, file)
                .Replace('\\', '/'), File.ReadAllText, StringComparer.Ordinal);
    }
}
