using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Rules.Frame;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Rules.Calculating;

/// <summary>Readings of another number or kind than the calculation takes.</summary>
/// <example>Bad: <c>one reading for thermistor-curve</c>. Good: <c>resistance, then temperature</c>.</example>
internal sealed class ReadingsDoNotFit : IContentRule
{
    public string Name => "readings-do-not-fit";

    public string Meaning => "Readings of another number or kind than the calculation takes.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## ⟦Readings⟧
        | Reading | Unit | Possible | Where |
        |---|---|---|---|
        | resistance | kΩ | 0 kΩ to 2000 kΩ | The two pins of RA |
        """);

    public RuleExample Good { get; } = new("checks/room-sensor.md", """
        ## Readings
        | Reading | Unit | Possible | Where |
        |---|---|---|---|
        | resistance | kΩ | 0 kΩ to 2000 kΩ | The two pins of RA |
        | temperature | °C | −20 °C to 60 °C | Thermometer beside the sensor |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.OfKind(PageKind.Check).SelectMany(Check);

    private IEnumerable<Diagnostic> Check(Page page)
    {
        if (page.Front!.Field("calculation") is null
            && (page.Section("Readings") ?? page.Section("Expected")) is { } idle)
        {
            yield return page.Error(Name, idle.Heading.Span, $"the check has `## {idle.Name}` and no calculation",
                "name a `calculation` in the front matter");
        }

        if (CalculatedCheck.Of(page) is not { Readings: { } table } check)
        {
            yield break;
        }

        // RepeatedRow reports a reading that stands twice.
        int readings = table.Rows.DistinctBy(row => row.Cell(0)?.Text).Count();
        if (!check.Judge.Counts.Contains(readings))
        {
            yield return page.Error(Name, page.Section("Readings")!.Heading.Span,
                $"`{check.Judge.Name}` takes {string.Join(" or ", check.Judge.Counts)} readings, not {readings}",
                "in this order: " + string.Join(", ", check.Judge.Readings.Select(need => need.Name)));
        }

        if (readings != table.Rows.Length || !check.Judge.Counts.Contains(readings))
        {
            yield break;
        }

        foreach ((RichText cell, ReadingNeed need) in check.UnitCells)
        {
            if (need.Kind is { } kind && Unit.TryParse(cell.Text, out _) && ReadingUnit.Read(cell.Text, kind) is null)
            {
                yield return page.Error(Name, cell.Span, $"`{cell.Text}` is not a unit of {KindWords.Of(kind)}",
                    $"`{check.Judge.Name}` takes the {need.Name} here; write {KindWords.UnitsOf(kind)}");
            }
        }
    }
}
