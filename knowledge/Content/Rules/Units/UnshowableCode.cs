using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Glyphs;

namespace DxAssistant.Knowledge.Content.Rules.Units;

/// <summary>A code that the display of its series cannot show.</summary>
/// <example>Bad: <c>| W1X | steady | …</c> on two digits. Good: <c>| F1 | steady | …</c>.</example>
internal sealed class UnshowableCode : IContentRule
{
    private const int Digits = 2;

    public string Name => "unshowable-code";

    public string Meaning => "A code that the display of its series cannot show.";

    public RuleExample Bad { get; } = new("series/alder-one.md", """
        ## Codes
        | Display | Look | Symptom | Means |
        |---|---|---|---|
        | ⟦W1X⟧ | steady | [Fan](../symptoms/fan-not-turning.md) | Fan speed not seen |
        """);

    public RuleExample Good { get; } = new("series/alder-one.md", """
        ## Codes
        | Display | Look | Symptom | Means |
        |---|---|---|---|
        | F1 | steady | [Fan](../symptoms/fan-not-turning.md) | Fan speed not seen |
        """);

    public ImmutableArray<ExamplePair> More { get; } =
        [.. new[] { "W1", "F@", "\u04151", "lamp" }.Select(wrong => new ExamplePair(
            Row($"| ⟦{wrong}⟧ | steady"), Row("| E1 | steady"))),
            new(Row("| F1 | ⟦3 blinks⟧"), Row("| F1 | flashing"))];

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Series)
        let display = page.Front?.Field("display")?.Text
        from row in page.Section("Codes")?.Table?.Rows ?? []
        where row.Cells.Length >= 2 && !row.Cells[0].IsEmpty
        from found in Check(page, display, row.Cells[0], row.Cells[1])
        select found;

    private IEnumerable<Diagnostic> Check(Page page, string? display, RichText code, RichText look)
    {
        if (display == "lamps" && code.Text is not ("lamp" or "lamps"))
            yield return page.Error(Name, code.Span, $"lamps cannot show `{code.Text}`",
                "write `lamp` or `lamps`, and behind it how they blink");
        // Many a unit with digits indoors has a lamp outdoors.
        if (display != "two digits" || (code.Text is "lamp" or "lamps" && LampPattern.TryRead(look.Text, out _)))
            yield break;
        if (WhyNot(code.Text) is { } why)
            yield return page.Error(Name, code.Span, $"two digits cannot show `{code.Text}`",
                OddCharacter.Said(why, code.Text));
        else if (LampPattern.TryRead(look.Text, out _))
            yield return page.Error(Name, look.Span, $"`{look.Text}` is how lamps look, not digits",
                "write `steady` or `flashing`, or `lamp` for the code");
    }

    private static string? WhyNot(string code) =>
        code.Length > Digits ? "write one or two characters"
        : code.FirstOrDefault(c => !SegmentTable.TryGet(c, out _)) is var odd and not '\0'
        ? $"no digit of seven segments shows `{odd}`"
        : null;

    private static RuleExample Row(string start) => new("series/alder-one.md", $"""
        ## Codes
        | Display | Look | Symptom | Means |
        |---|---|---|---|
        {start} | [Fan](../symptoms/fan-not-turning.md) | Fan speed not seen |
        """);
}
