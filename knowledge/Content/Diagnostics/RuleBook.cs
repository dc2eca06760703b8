using System.Collections.Immutable;
using System.Text;
using DxAssistant.Knowledge.Content.Rules;

namespace DxAssistant.Knowledge.Content;

/// <summary>All rules of the content compiler, for people.</summary>
public static class RuleBook
{
    /// <summary>The name of the rule about places that a new page left for its author.</summary>
    public const string LeftToDo = "left-to-do";

    /// <summary>In the order of their names.</summary>
    public static ImmutableArray<RuleEntry> All { get; } = [.. ContentRules.All.Select(EntryOf)];

    /// <summary>The rule with a name, or null.</summary>
    public static RuleEntry? Find(string name) => All.FirstOrDefault(rule => rule.Name == name);

    /// <summary>The name that was probably meant, or null.</summary>
    public static string? Meant(string name) => NearestWord.Find(name, All.Select(rule => rule.Name));

    /// <summary>The whole book as one page.</summary>
    public static string Page()
    {
        var page = new StringBuilder(
            "# Rules of the content compiler\n\nMade from the rules themselves; a test compares. "
            + "What a rule marks stands between ⟦ and ⟧. `content explain RULE` shows one.\n");
        foreach (RuleEntry rule in All) page.Append('\n').Append(Section(rule));
        return page.ToString();
    }

    /// <summary>One rule as a section of a page.</summary>
    public static string Section(RuleEntry rule)
    {
        var text = new StringBuilder($"## {rule.Name}\n{rule.Meaning}\n");
        foreach (RuleEntryExample example in rule.Examples)
        {
            text.Append(Piece("Bad", example.Path, example.Bad)).Append(Piece("Good", example.Path, example.Good));
        }

        return text.ToString();
    }

    // Four tildes: no page holds as many.
    private static string Piece(string title, string path, string text) => text.Length == 0
        ? $"\n{title}: there is no `{path}`.\n"
        : $"\n{title}, `{path}`:\n~~~~markdown\n{text.TrimEnd('\n')}\n~~~~\n";

    private static RuleEntry EntryOf(IContentRule rule) => new(rule.Name, rule.Meaning,
        [.. rule.More.Prepend(new ExamplePair(rule.Bad, rule.Good))
            .Select(pair => new RuleEntryExample(pair.Bad.Path, Shown(pair.Bad.Marked), Shown(pair.Good.Marked)))]);

    // What nobody can see or no file should hold is shown by its number.
    private static string Shown(string text)
    {
        var shown = new StringBuilder();
        foreach (char c in text)
        {
            if (c != '\n' && (char.IsControl(c) || c == '\uFFFD')) shown.Append($"\\u{(int)c:X4}");
            else shown.Append(c);
        }

        string all = shown.ToString();
        return all.Length > 2_000 ? all[..400] + "\n… and so on" : all;
    }
}
