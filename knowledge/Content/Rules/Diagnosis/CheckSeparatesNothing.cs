using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A check each of whose outcomes is as likely under one fault as under any other.</summary>
/// <example>Bad: <c>every row `always | never`</c>. Good: <c>| [Plug](…) | never | always |</c>.</example>
internal sealed class CheckSeparatesNothing : IContentRule
{
    public string Name => "check-separates-nothing";

    public string Meaning => "A check each of whose outcomes is as likely under one fault as under any other.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## ⟦Likelihoods⟧
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | always | never |
        | [Motor](../faults/fan-motor-failed.md) | always | never |
        | every other fault | always | never |
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Likelihoods
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | never | always |
        | [Motor](../faults/fan-motor-failed.md) | 0.97 | 0.03 |
        | every other fault | always | never |
        """);

    private const double Same = 1e-9;

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        let table = LikelihoodTable.Of(page, pages)
        where table is { Outcomes.Length: > 1 } && IsTrueOf(table)
        select page.Error(Name, page.Section("Likelihoods")!.Heading.Span,
            "no outcome of this check tells one fault from another",
            "give the fault that the check is for likelihoods of its own");

    /// <summary>True when all rows are readable and say the same.</summary>
    internal static bool IsTrueOf(LikelihoodTable table) => table.EveryOther is { } other
        && table.GoodRows.Count() == table.Rows.Length && table.GoodRows.All(row => IsSame(row, other));

    /// <summary>True when both rows say the same once scaled.</summary>
    internal static bool IsSame(LikelihoodRow left, LikelihoodRow right) =>
        left.Scaled().Zip(right.Scaled()).All(pair => Math.Abs(pair.First - pair.Second) < Same);
}
