using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Which kinds go for which.</summary>
internal static class Kinds
{
    /// <summary>True when a number of one kind may stand where another is wanted: a pressure without a zero for a
    /// gauge pressure.</summary>
    public static bool Fit(QuantityKind wanted, QuantityKind given) => wanted == given || (wanted, given) switch
    {
        (QuantityKind.GaugePressure, QuantityKind.Pressure) or (QuantityKind.Pressure, QuantityKind.GaugePressure) =>
            true,
        (QuantityKind.TemperatureDifference, QuantityKind.Temperature) => true,
        _ => false,
    };

    /// <summary>True when two numbers may be compared as they stand.</summary>
    public static bool Same(QuantityKind one, QuantityKind other) =>
        one == other || one is QuantityKind.Pressure or QuantityKind.GaugePressure
            && other is QuantityKind.Pressure or QuantityKind.GaugePressure;

    /// <summary>The unit of a difference of numbers in a unit: K for °C, F_diff for °F, else the unit itself.</summary>
    public static Unit Difference(Unit unit) => unit.Kind != QuantityKind.Temperature ? unit
        : unit.ToSi(1) - unit.ToSi(0) < 1 ? Units.FahrenheitDifference : Units.Kelvin;

    /// <summary>A number in the SI base of a unit's kind, in that unit.</summary>
    public static Quantity In(this double si, Unit unit) => new(unit.FromSi(si), unit);
}
