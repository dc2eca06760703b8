using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Glyphs;
using DxAssistant.Knowledge.Glyphs.Finding;

namespace DxAssistant.Knowledge.Content.Rules.Units;

/// <summary>A display code twice in a series with the same look.</summary>
/// <example>Bad: <c>| F1 | steady | … | twice</c>. Good: <c>| F1 | steady | and | F1 | flashing |</c>.</example>
internal sealed class DuplicateCode : IContentRule
{
    public string Name => "duplicate-code";

    public string Meaning => "A display code twice in a series with the same look.";

    public RuleExample Bad { get; } = new("series/alder-one.md", """
        ## Codes
        | Display | Look | Symptom | Means |
        |---|---|---|---|
        | F1 | steady | [Fan](../symptoms/fan-not-turning.md) | Fan speed not seen |
        | ⟦F1⟧ | steady | [Sensor](../symptoms/sensor-code.md) | Sensor out of range |
        """);

    public RuleExample Good { get; } = new("series/alder-one.md", """
        ## Codes
        | Display | Look | Symptom | Means |
        |---|---|---|---|
        | F1 | steady | [Fan](../symptoms/fan-not-turning.md) | Fan speed not seen |
        | F1 | flashing | [Sensor](../symptoms/sensor-code.md) | Sensor out of range |
        """);

    public ImmutableArray<ExamplePair> More { get; } = [new(Codes("A5", "⟦AS⟧"), Codes("A5", "A6"))];

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Series)
        let table = page.Section("Codes")?.Table
        where table is not null
        from same in table.Rows.Where(row => row.Cells.Length >= 2)
            .GroupBy(row => (Shown(row.Cells[0].Text), Look(row.Cells[1].Text)))
        from row in same.Skip(1)
        select page.Error(Name, row.Cells[0].Span,
            row.Cells[0].Text == same.First().Cells[0].Text
                ? $"`{row.Cells[0].Text}` ({row.Cells[1].Text}) stands twice in this series"
                : $"`{row.Cells[0].Text}` looks on a display like `{same.First().Cells[0].Text}`, which stands in this series already",
            "give the code one meaning, or the symptom all its causes");

    private static RuleExample Codes(string one, string other) => new("series/alder-one.md", $"""
        ## Codes
        | Display | Look | Symptom | Means |
        |---|---|---|---|
        | {one} | steady | [Fan](../symptoms/fan-not-turning.md) | Fan speed not seen |
        | {other} | steady | [Sensor](../symptoms/sensor-code.md) | Sensor out of range |
        """);

    // A 5 and an S are one shape, and letters of other alphabets are none.
    private static string Shown(string code) =>
        CanonicalForm.Of(OddCharacter.Plain(code)) is { Length: > 0 } shown ? shown : code;

    // Which lamp is named first makes no other code.
    private static string Look(string text) =>
        LampPattern.TryRead(text, out LampPattern? lamps) ? lamps.ToString() : text;
}
