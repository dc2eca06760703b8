using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Readings;

/// <summary>The unit in which a market reads what a page states in another.</summary>
public static class MarketUnits
{
    /// <summary>°F for °C, psi for kPa and the other way round; any other unit, or any unit of no market,
    /// stays.</summary>
    public static Unit Of(Unit unit, Market? market) => market switch
    {
        null => unit,
        Market.FahrenheitPsi => Named(unit, "°F", "psi", "psig"),
        _ => Named(unit, unit.Kind == QuantityKind.TemperatureDifference ? "K" : "°C", "kPa", "kPa(g)"),
    };

    private static Unit Named(Unit unit, string degrees, string pressure, string gauge) => unit.Kind switch
    {
        QuantityKind.Temperature or QuantityKind.TemperatureDifference => OfKind(unit, degrees),
        QuantityKind.Pressure when unit != Quantities.Units.Pascal => OfKind(unit, pressure),
        QuantityKind.GaugePressure =>
            OfKind(unit, unit.Symbol.Contains('g', StringComparison.Ordinal) ? gauge : pressure),
        _ => unit,
    };

    private static Unit OfKind(Unit unit, string symbol) => Unit.TryParse(symbol, unit.Kind, out Unit? other) ? other
        : unit;
}
