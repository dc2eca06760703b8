using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Calculating;

/// <summary>An expected input that the calculation does not have.</summary>
/// <example>Bad: <c>| tolerence | 2 K |</c>. Good: <c>| tolerance | 2 K |</c>.</example>
internal sealed class UnknownInput : IContentRule
{
    public string Name => "unknown-input";

    public string Meaning => "An expected input that the calculation does not have.";

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## Expected
        | Input | Value | Source |
        |---|---|---|
        | curve | series room-air-sensor | series page |
        | ⟦tolerence⟧ | 2 K | [Common practice](../sources.md#common-practice) |
        | meter | 1 % + 3 × 0.01 kΩ | [Common practice](../sources.md#common-practice) |
        | thermometer | 1 K | [Common practice](../sources.md#common-practice) |
        """);

    public RuleExample Good { get; } = new("checks/room-sensor.md", """
        ## Expected
        | Input | Value | Source |
        |---|---|---|
        | curve | series room-air-sensor | series page |
        | tolerance | 2 K | [Common practice](../sources.md#common-practice) |
        | meter | 1 % + 3 × 0.01 kΩ | [Common practice](../sources.md#common-practice) |
        | thermometer | 1 K | [Common practice](../sources.md#common-practice) |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        let check = CalculatedCheck.Of(page)
        where check?.Expected is not null
        from row in check!.Expected!.Rows
        where row.Cells.Length > 0 && !row.Cells[0].IsEmpty
            && check.Judge.Inputs.All(need => need.Name != row.Cells[0].Text)
        select page.Error(Name, row.Cells[0].Span, $"`{check.Judge.Name}` has no input `{row.Cells[0].Text}`",
            NearestWord.HintOrList(row.Cells[0].Text, check.Judge.Inputs.Select(need => need.Name)));
}
