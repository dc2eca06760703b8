using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>Readings of another number or kind than the calculation takes.</summary>
/// <example>Bad: <c>one reading for thermistor-curve</c>. Good: <c>resistance, then temperature</c>.</example>
internal sealed class ReadingsDoNotFit : IContentRule
{
    public string Name => "readings-do-not-fit";

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

    private static readonly string[] Headings = ["Readings", "Expected"];

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.OfKind(PageKind.Check).SelectMany(Check);

    private IEnumerable<Diagnostic> Check(Page page)
    {
        bool calculates = page.Front!.Field("calculation") is not null;
        foreach (string heading in Headings.Where(heading => page.Section(heading) is null == calculates))
        {
            yield return page.Error(Name, page.Section(heading)?.Heading.Span ?? page.Title?.Heading.Span ?? default,
                calculates
                    ? $"the check calculates and has no `## {heading}`"
                    : $"the check has `## {heading}` and no calculation",
                calculates ? null : "name a `calculation` in the front matter");
        }

        if (CalculatedCheck.Of(page) is not { Readings: { } table } check)
        {
            yield break;
        }

        if (!check.Judge.Counts.Contains(table.Rows.Length))
        {
            yield return page.Error(Name, page.Section("Readings")!.Heading.Span,
                $"`{check.Judge.Name}` takes {string.Join(" or ", check.Judge.Counts)} readings, not {table.Rows.Length}",
                "in this order: " + string.Join(", ", check.Judge.Readings.Select(need => need.Name)));
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
