using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A clarifying question says that a symptom tells an answer which it does not have.</summary>
/// <example>Bad: <c>| [Noise](../symptoms/noise.md) | indoors |</c> where the answers are inside and outside. Good:
/// <c>| … | inside |</c>.</example>
internal sealed class UnknownAnswer : IContentRule
{
    public string Name => "unknown-answer";

    public string Meaning => "A clarifying question says that a symptom tells an answer which it does not have.";

    public RuleExample Bad { get; } = new("questions/where.md", """
        ## Told by
        | Symptom | Answer |
        |---|---|
        | [Indoor fan does not turn](../symptoms/fan-not-turning.md) | ⟦indoors⟧ |
        | [Indoor fan does not turn](../symptoms/fan-not-turning.md) | outside |
        """);

    public RuleExample Good { get; } = new("questions/where.md", """
        ## Told by
        | Symptom | Answer |
        |---|---|
        | [Indoor fan does not turn](../symptoms/fan-not-turning.md) | inside |
        | [Indoor fan does not turn](../symptoms/fan-not-turning.md) | outside |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Question)
        let answers = page.Section("Answers")?.Table
        let told = page.Section("Told by")?.Table
        where answers is not null && told is not null
        let known = answers.Rows.Select(row => row.Cell(0)?.Text).OfType<string>().ToArray()
        from row in told.Rows
        let cell = row.Cell(1)
        where cell is not null && !known.Contains(cell.Text)
        select page.Error(Name, cell.Span, $"`{cell.Text}` is not an answer of this question",
            NearestWord.HintOrList(cell.Text, known));
}
