using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Calculating;

/// <summary>A check that takes a value of the series which a series of the check does not give.</summary>
/// <example>Bad: <c>series sensor-tolerance, which no series gives</c>. Good: <c>2 K</c>.</example>
internal sealed class MissingRating : IContentRule
{
    public string Name => "missing-rating";

    public string Meaning => "A check that takes a value of the series which a series of the check does not give.";

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## Expected
        | Input | Value | Source |
        |---|---|---|
        | curve | series room-air-sensor | series page |
        | tolerance | ⟦series sensor-tolerance⟧ | [Common practice](../sources.md#common-practice) |
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
        let table = page.Section("Expected")?.Table
        where table is not null
        from row in table.Rows
        let value = row.Cell(1)
        let rating = value is null ? null : SeriesValue.Rating(value.Text)
        where rating is not null
        let without = SeriesOf.Pages(pages, page)
            .Where(series => series.Section("Ratings")?.Table is not null && !SeriesValue.Cells(series, rating).Any())
                .ToArray()
        where without.Length > 0
        select page.Error(Name, value.Span,
            $"no rating `{rating}` in " + string.Join(", ", without.Select(series => $"`{series.Id}`")),
            Help(rating, without[0]));

    private static Remedy Help(string rating, Page series) =>
        NearestWord.Hint(rating, series.Section("Ratings")?.Table?.Rows.Select(row => row.Cell(0)?.Text ?? "") ?? [])
        ?? "add it under `## Ratings`, or name in the check's `series` those that have it";
}
