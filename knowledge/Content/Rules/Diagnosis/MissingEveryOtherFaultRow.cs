using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>Likelihoods that leave open what the faults do that they do not list.</summary>
/// <example>Bad: <c>no row `every other fault`</c>. Good: <c>| every other fault | always | never |</c>.</example>
internal sealed class MissingEveryOtherFaultRow : IContentRule
{
    public string Name => "missing-every-other-fault-row";

    public string Meaning => "Likelihoods that leave open what the faults do that they do not list.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## ⟦Likelihoods⟧
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | never | always |
        | [Motor](../faults/fan-motor-failed.md) | 0.97 | 0.03 |
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Likelihoods
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | never | always |
        | [Motor](../faults/fan-motor-failed.md) | 0.97 | 0.03 |
        | every other fault | always | never |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        let table = LikelihoodTable.Of(page, pages)
        where table is { EveryOther: null } && !table.Rows.Any(IsMisspelt)
        select page.Error(Name, page.Section("Likelihoods")!.Heading.Span,
            "the likelihoods have no row `every other fault`",
            "add `| every other fault | … |` as the last row");

    // RowWithoutFault reports it.
    private static bool IsMisspelt(LikelihoodRow row) =>
        NearestWord.Find(row.Row.Cell(0)?.Text ?? "", [LikelihoodTable.EveryOtherFault]) is not null;
}
