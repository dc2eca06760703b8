using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Numbers;

/// <summary>A range of possible readings that cannot be read, or is of another kind than its unit.</summary>
/// <example>Bad: <c>0 to 2000 kΩ</c>. Good: <c>0 kΩ to 2000 kΩ</c>.</example>
internal sealed class WrongRange : IContentRule
{
    public string Name => "wrong-range";

    public string Meaning => "A range of possible readings that cannot be read, or is of another kind than its unit.";

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## Readings
        | Reading | Unit | Possible | Where |
        |---|---|---|---|
        | resistance | kΩ | ⟦0 to 2000 kΩ⟧ | The two pins of RA |
        | temperature | °C | −20 °C to 60 °C | Thermometer beside the sensor |
        """);

    public RuleExample Good { get; } = new("checks/room-sensor.md", """
        ## Readings
        | Reading | Unit | Possible | Where |
        |---|---|---|---|
        | resistance | kΩ | 0 kΩ to 2000 kΩ | The two pins of RA |
        | temperature | °C | −20 °C to 60 °C | Thermometer beside the sensor |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        let check = CalculatedCheck.Of(page)
        where check?.Readings is not null
        from pair in check!.Readings!.Rows.Zip(check.Judge.Readings)
        where pair.First.Cells.Length == 4 && !pair.First.Cells[2].IsEmpty
        let unit = ReadingUnit.Read(pair.First.Cells[1].Text, pair.Second.Kind)
        let possible = pair.First.Cells[2]
        where unit is not null && !PossibleRange.TryRead(possible.Text, unit.Kind, out _)
        select page.Error(Name, possible.Span, $"`{possible.Text}` is not a range of {KindWords.Of(unit.Kind)}",
            $"write `LOW {unit.Symbol} to HIGH {unit.Symbol}`");
}
