using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Calculating;

/// <summary>Inputs that are each right and do not fit together, such as a low limit above the high one.</summary>
/// <example>Bad: <c>| low | 114 V | above | high | 12.6 V |</c>. Good: <c>| low | 11.4 V |</c>.</example>
internal sealed class InputsDoNotFit : IContentRule
{
    public string Name => "inputs-do-not-fit";

    public string Meaning =>
        "Inputs that are each right and do not fit together, such as a low limit above the high one.";

    public RuleExample Bad { get; } = new("checks/board-supply.md", """
        ## ⟦Expected⟧
        | Input | Value | Source |
        |---|---|---|
        | low | 114 V | [Common practice](../sources.md#common-practice) |
        | high | 12.6 V | [Common practice](../sources.md#common-practice) |
        | meter | 0.5 % + 2 × 0.01 V | [Common practice](../sources.md#common-practice) |
        """);

    public RuleExample Good { get; } = new("checks/board-supply.md", """
        ## Expected
        | Input | Value | Source |
        |---|---|---|
        | low | 11.4 V | [Common practice](../sources.md#common-practice) |
        | high | 12.6 V | [Common practice](../sources.md#common-practice) |
        | meter | 0.5 % + 2 × 0.01 V | [Common practice](../sources.md#common-practice) |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        let check = CalculatedCheck.Of(page)
        where check?.Expected is not null && check.HasAllInputs
        from problem in Problems(pages, check!).Take(1)
        select page.Error(Name, page.Section("Expected")!.Heading.Span, problem);

    // One series is enough to show it.
    private static IEnumerable<string> Problems(Pages pages, CalculatedCheck check) =>
        from series in SeriesOf.Pages(pages, check.Page)
        let inputs = check.InputsFor(series, pages)
        let problem = inputs is null ? null : check.Judge.ProblemWith(inputs)
        where problem is not null
        select check.Inputs.Any(row => SeriesValue.Rating(row.Value.Text) is not null)
            ? $"{problem} in the series `{series.Id}`"
            : problem;
}
