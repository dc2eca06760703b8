using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Numbers;

/// <summary>A number without a source.</summary>
/// <example>Bad: <c>| supply | 230 V | |</c>. Good: <c>| supply | 230 V | [Common
/// practice](../sources.md#common-practice) |</c>.</example>
internal sealed class MissingSource : IContentRule
{
    public string Name => "missing-source";

    public string Meaning => "A number without a source.";

    public RuleExample Bad { get; } = new("series/alder-one.md", """
        ## Ratings
        | Rating | Value | Source |
        |---|---|---|
        | supply | ⟦230 V⟧ | |
        | room-air-sensor | [10 kΩ](../curves/room-10k.md) | [Common practice](../sources.md#common-practice) |
        """);

    public RuleExample Good { get; } = new("series/alder-one.md", """
        ## Ratings
        | Rating | Value | Source |
        |---|---|---|
        | supply | 230 V | [Common practice](../sources.md#common-practice) |
        | room-air-sensor | [10 kΩ](../curves/room-10k.md) | [Common practice](../sources.md#common-practice) |
        """);

    private const string Help =
        "write `[Common practice](../sources.md#common-practice)`, or link to the document's heading in `sources.md`";

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.All.Where(page => page.Kind is not null)
        .SelectMany(page => CheckTables(pages, page).Concat(CheckLinks(pages, page)));

    private IEnumerable<Diagnostic> CheckTables(Pages pages, Page page) =>
        from table in page.Sections.SelectMany(section => section.Tables)
        let column = table.Column("Source")
        where column > 0
        from row in table.Rows
        where row.Cells.Length == table.Head.Cells.Length
        let value = row.Cells[column - 1]
        let source = row.Cells[column]
        where !value.IsEmpty && source.Link is null && !IsOfSeries(value, source)
        select page.Error(Name, value.Span, $"`{value.Text}` has no source",
            SeriesValue.Rating(value.Text) is null ? Help : "write `series page`");

    // A value that the series gives has its source on the page of the series.
    private static bool IsOfSeries(RichText value, RichText source) =>
        SeriesValue.Rating(value.Text) is not null && source.Text == "series page";

    private IEnumerable<Diagnostic> CheckLinks(Pages pages, Page page) =>
        from link in page.Links
        where link.Anchor is null && page.Kind != PageKind.Index
            && pages.Target(page, link, PageKind.Sources) is not null
        select page.Error(Name, link.TargetSpan, "the link names no source", "add `#` and the heading of the source");
}
