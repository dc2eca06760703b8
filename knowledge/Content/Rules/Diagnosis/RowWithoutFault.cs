using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Rules.Linking;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A row of likelihoods that is not of a fault.</summary>
/// <example>Bad: <c>| Fan room sensor | always | never |</c>. Good: <c>| [Motor](../faults/fan-motor-failed.md) | 0.97
/// | 0.03 |</c>.</example>
internal sealed class RowWithoutFault : IContentRule
{
    public string Name => "row-without-fault";

    public string Meaning => "A row of likelihoods that is not of a fault.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Likelihoods
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | never | always |
        | [Motor](../faults/fan-motor-failed.md) | 0.97 | 0.03 |
        | ⟦Fan room sensor⟧ | always | never |
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

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        let table = LikelihoodTable.Of(page, pages)
        where table is not null
        from row in table.Rows
        let head = row.Row.Cell(0)
        where head is not null && !row.IsEveryOther && row.Fault is null && !IsReportedElsewhere(pages, page, head)
        select page.Error(Name, head.Span, $"`{head.Text}` does not link to a fault page",
            NearestWord.Hint(head.Text, [LikelihoodTable.EveryOtherFault])
                ?? "write `[Title](../faults/id.md)` or `every other fault`");

    // BrokenLink reports links to nowhere; a page that could not be read is reported itself.
    private static bool IsReportedElsewhere(Pages pages, Page page, RichText head) =>
        head.Link is not null && pages.Target(page, head.Link)?.Kind is null;
}
