using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Units;

/// <summary>Terms of coverage that say nothing of parts in no class.</summary>
/// <example>Bad: <c>only | electronics | 24 | 60 |</c>. Good: <c>and | every other part | 12 | 12 |</c>.</example>
internal sealed class MissingEveryOtherPartRow : IContentRule
{
    public string Name => "missing-every-other-part-row";

    public string Meaning => "Terms of coverage that say nothing of parts in no class.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("coverage/alder-one.md", """
        ## Parts
        | ⟦Part class⟧ | Months | Registered | Source |
        |---|---|---|---|
        | electronics | 24 | 60 | [Common practice](../sources.md#common-practice) |
        """);

    public RuleExample Good { get; } = new("coverage/alder-one.md", """
        ## Parts
        | Part class | Months | Registered | Source |
        |---|---|---|---|
        | electronics | 24 | 60 | [Common practice](../sources.md#common-practice) |
        | every other part | 12 | 12 | [Common practice](../sources.md#common-practice) |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Coverage)
        let table = page.Section("Parts")?.Table
        where table is not null && !table.Head.Cells.IsEmpty
            && table.Rows.All(row => row.Cell(0)?.Text != PartList.EveryOther)
        select page.Error(Name, table.Head.Cells[0].Span, $"no row says `{PartList.EveryOther}`",
            $"add a row `| {PartList.EveryOther} | … |`");
}
