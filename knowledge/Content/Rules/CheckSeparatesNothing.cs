using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A check each of whose outcomes is as likely under one fault as under any other.</summary>
/// <example>Bad: <c>every row `always | never`</c>. Good: <c>| [Plug](…) | never | always |</c>.</example>
internal sealed class CheckSeparatesNothing : IContentRule
{
    public string Name => "check-separates-nothing";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## ⟦Likelihoods⟧
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | always | never |
        | every other fault | always | never |
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Likelihoods
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | never | always |
        | every other fault | always | never |
        """);

    private const double Same = 1e-9;

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        let table = LikelihoodTable.Of(page, pages)
        where table is not null && table.EveryOther is not null && table.GoodRows.Count() == table.Rows.Length
        where table.GoodRows.All(row => IsSame(row, table.EveryOther!))
        select page.Error(Name, page.Section("Likelihoods")!.Heading.Span, "no outcome of this check tells one fault from another",
            "give the fault that the check is for likelihoods of its own");

    /// <summary>True when both rows say the same once scaled.</summary>
    internal static bool IsSame(LikelihoodRow left, LikelihoodRow right) =>
        left.Scaled().Zip(right.Scaled()).All(pair => Math.Abs(pair.First - pair.Second) < Same);
}
