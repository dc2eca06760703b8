using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A clarifying question whose answers are all told by the same symptoms: it tells nothing apart.</summary>
/// <example>Bad: <c>every row under Told by says inside</c>. Good: <c>one symptom says inside, another
/// outside</c>.</example>
internal sealed class QuestionSeparatesNothing : IContentRule
{
    public string Name => "question-separates-nothing";

    public string Meaning =>
        "A clarifying question whose answers are all told by the same symptoms: it tells nothing apart.";

    public RuleExample Bad { get; } = new("questions/where.md", """
        ## ⟦Told by⟧
        | Symptom | Answer |
        |---|---|
        | [Indoor fan does not turn](../symptoms/fan-not-turning.md) | inside |
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
        let told = page.Section("Told by")
        where told?.Table is not null && told.Table.Rows.Select(row => row.Cell(1)?.Text).Distinct().Count() < 2
        select page.Error(Name, told.Heading.Span,
            "one answer alone is told by symptoms, so that the question tells none of them apart",
            "give at least two answers a symptom each, or take the page away");
}
