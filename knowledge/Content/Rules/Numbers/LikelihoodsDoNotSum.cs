using System.Globalization;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Numbers;

/// <summary>A row of likelihoods that does not sum to 1, give or take 0.05.</summary>
/// <example>Bad: <c>| seldom | often |</c>. Good: <c>| seldom | usually |</c>.</example>
internal sealed class LikelihoodsDoNotSum : IContentRule
{
    public string Name => "likelihoods-do-not-sum";

    public string Meaning => "A row of likelihoods that does not sum to 1, give or take 0.05.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Likelihoods
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | ⟦seldom | often⟧ |
        | [Motor](../faults/fan-motor-failed.md) | 0.97 | 0.03 |
        | every other fault | always | never |
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Likelihoods
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | seldom | usually |
        | [Motor](../faults/fan-motor-failed.md) | 0.97 | 0.03 |
        | every other fault | always | never |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        let table = LikelihoodTable.Of(page, pages)
        where table is not null
        from row in table.Rows
        where row.Readable && row.Written.Length == table.Outcomes.Length && !row.Written.IsEmpty && !row.SumsToOne
        select page.Error(Name, SpanOf(row), Message(row), Help(row));

    private static TextSpan SpanOf(LikelihoodRow row) =>
        TextSpan.Between(row.Row.Cells[1].Span.Start, row.Row.Cells[^1].Span.End);

    private static string Message(LikelihoodRow row) => row.HasBlank
        ? string.Create(CultureInfo.InvariantCulture,
            $"the row sums to {row.Sum:0.###} and leaves nothing for its blank cells")
        : string.Create(CultureInfo.InvariantCulture, $"the row sums to {row.Sum:0.###}, not to 1");

    private static string Help(LikelihoodRow row) => row.HasBlank
        ? "lower a word, or write a word in each cell"
        : "change a word, or leave one cell blank: it takes what is left to 1";
}
