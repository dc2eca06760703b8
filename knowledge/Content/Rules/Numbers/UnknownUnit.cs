using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Rules.Numbers;

/// <summary>A unit of a reading that no page may use.</summary>
/// <example>Bad: <c>| resistance | kOm |</c>. Good: <c>| resistance | kΩ |</c>.</example>
internal sealed class UnknownUnit : IContentRule
{
    public string Name => "unknown-unit";

    public string Meaning => "A unit of a reading that no page may use.";

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## Readings
        | Reading | Unit | Possible | Where |
        |---|---|---|---|
        | resistance | ⟦kOm⟧ | 0 kΩ to 2000 kΩ | The two pins of RA |
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
        where check is not null
        from pair in check.UnitCells
        where !Unit.TryParse(pair.Cell.Text, out _)
        select page.Error(Name, pair.Cell.Span,
            pair.Need.Kind is { } kind ? $"`{pair.Cell.Text}` is not a unit of {KindWords.Of(kind)}"
                : $"`{pair.Cell.Text}` is not a unit",
            Help(pair.Cell.Text, pair.Need.Kind));

    private static Remedy? Help(string text, QuantityKind? kind) => kind is { } wanted
        ? "write " + KindWords.UnitsOf(wanted)
        : NearestWord.Hint(text, Unit.All.Select(unit => unit.Symbol).Where(symbol => symbol.Length > 0));
}
