using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Glyphs;

namespace DxAssistant.Knowledge.Content.Rules.Units;

/// <summary>A code that is neither steady, nor flashing, nor a number of blinks, nor one for each lamp.</summary>
/// <example>Bad: <c>| F2 | blinking | …</c>. Good: <c>| F2 | flashing | …</c>.</example>
internal sealed class UnknownLook : IContentRule
{
    public string Name => "unknown-look";

    public string Meaning =>
        "A code that is neither steady, nor flashing, nor a number of blinks, nor one for each lamp.";

    public RuleExample Bad { get; } = new("series/alder-one.md", """
        ## Codes
        | Display | Look | Symptom | Means |
        |---|---|---|---|
        | F1 | steady | [Fan](../symptoms/fan-not-turning.md) | Fan speed not seen |
        | F2 | ⟦blinking⟧ | [Sensor](../symptoms/sensor-code.md) | Sensor out of range |
        """);

    public RuleExample Good { get; } = new("series/alder-one.md", """
        ## Codes
        | Display | Look | Symptom | Means |
        |---|---|---|---|
        | F1 | steady | [Fan](../symptoms/fan-not-turning.md) | Fan speed not seen |
        | F2 | flashing | [Sensor](../symptoms/sensor-code.md) | Sensor out of range |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Series)
        let table = page.Section("Codes")?.Table
        where table is not null
        from row in table.Rows
        let look = row.Cell(table.Column("Look"))
        where look is { IsEmpty: false } && !IsLook(look.Text)
        select page.Error(Name, look.Span, $"`{look.Text}` is not how a code looks",
            "write `steady`, `flashing` or, for lamps, `3 blinks` or `green 3, red 1`");

    private static bool IsLook(string text) => text is "steady" or "flashing" || LampPattern.TryRead(text, out _);
}
