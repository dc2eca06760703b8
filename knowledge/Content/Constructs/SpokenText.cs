using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>
/// A text that is read at the unit or aloud over the telephone: a question, a step or a line of a caution.
/// </summary>
/// <param name="Text">As written.</param>
/// <param name="IsQuestion">True for what a check or a verification asks.</param>
internal sealed record SpokenText(RichText Text, bool IsQuestion)
{
    /// <summary>The sentences; what stands before a colon counts as one of its own.</summary>
    public IEnumerable<string> Sentences =>
        Text.Text.Split([". ", "? ", "! ", ": "], StringSplitOptions.RemoveEmptyEntries);

    /// <summary>What a page has people read; empty for kinds that say nothing themselves.</summary>
    public static IEnumerable<SpokenText> On(Page page) => page.Kind switch
    {
        PageKind.Check => Paragraphs(page, "Ask", isQuestion: true).Concat(Items(page, "How")),
        PageKind.Repair => Items(page, "Steps").Concat(Paragraphs(page, "Verify", isQuestion: true)),
        PageKind.Caution => Paragraphs(page, "Danger", isQuestion: false).Concat(Items(page, "Do")),
        PageKind.Access => Steps(page),
        _ => [],
    };

    private static IEnumerable<SpokenText> Paragraphs(Page page, string heading, bool isQuestion) =>
        (page.Section(heading)?.Paragraphs ?? []).Select(text => new SpokenText(text, isQuestion));

    private static IEnumerable<SpokenText> Items(Page page, string heading) =>
        (page.Section(heading)?.Items ?? []).Select(text => new SpokenText(text, false));

    private static IEnumerable<SpokenText> Steps(Page page) => page.Section("Steps")?.Table is not { } table ? []
        : table.Rows.Select(row => row.Cell(0)).OfType<RichText>().Select(text => new SpokenText(text, false));
}
