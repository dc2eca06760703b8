using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Numbers;

/// <summary>A class of meters whose ranges cannot be read, do not rise, or promise another quantity.</summary>
/// <example>Bad: <c>| 600 Ω | 1 % + 3 × 0.1 V |</c>. Good: <c>| 600 Ω | 1 % + 3 × 0.1 Ω |</c>.</example>
internal sealed class WrongMeter : IContentRule
{
    public string Name => "wrong-meter";

    public string Meaning => "A class of meters whose ranges cannot be read, do not rise, or promise another quantity.";

    public RuleExample Bad { get; } = new("meters/multimeter.md", """
        ## Ranges
        | Up to | Limit of error | Source |
        |---|---|---|
        | 600 Ω | ⟦1 % + 3 × 0.1 V⟧ | [Common practice](../sources.md#common-practice) |
        """);

    public RuleExample Good { get; } = new("meters/multimeter.md", """
        ## Ranges
        | Up to | Limit of error | Source |
        |---|---|---|
        | 600 Ω | 1 % + 3 × 0.1 Ω | [Common practice](../sources.md#common-practice) |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.OfKind(PageKind.Meter)
        .Select(page => (page, Problem: MeterReader.Read(page, out _)))
        .Where(pair => pair.Problem is not null)
        .Select(pair => pair.page.Error(Name, pair.Problem!.At, pair.Problem.Message,
            "a range is `| 600 Ω | 1 % + 3 × 0.1 Ω |`, ranges of one quantity rise"));
}
