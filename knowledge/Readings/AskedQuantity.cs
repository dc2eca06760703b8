using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Readings;

/// <summary>The names by which programs and pages say which quantity was asked.</summary>
public static class AskedQuantity
{
    private static readonly FrozenDictionary<string, QuantityKind> Kinds = new (string Names, QuantityKind Kind)[]
    {
        ("resistance|insulation|continuity|winding|ohm|kilohm|megohm|thermistor|sensor|coil", QuantityKind.Resistance),
        ("voltage|volt|diode|diodedrop|bus|dcbus|millivolt", QuantityKind.Voltage),
        ("current|amp|ampere|amperage|milliamp", QuantityKind.Current),
        ("temperature|temp|ambient|celsius|fahrenheit", QuantityKind.Temperature),
        ("temperaturedifference|temperaturedelta|superheat|subcooling|deltat", QuantityKind.TemperatureDifference),
        ("pressure", QuantityKind.Pressure),
        ("gaugepressure|suction|lowside|highside|head|liquidpressure", QuantityKind.GaugePressure),
        ("absolutepressure|vacuum", QuantityKind.AbsolutePressure),
        ("capacitance|capacitor|microfarad", QuantityKind.Capacitance),
        ("frequency|hertz", QuantityKind.Frequency), ("power|watt", QuantityKind.Power),
        ("airflow", QuantityKind.AirFlow),
        ("speed|fanspeed|rotationalspeed", QuantityKind.RotationalSpeed), ("time|duration", QuantityKind.Time),
        ("humidity|relativehumidity|percent|ratio", QuantityKind.Ratio), ("length", QuantityKind.Length),
            ("mass|weight", QuantityKind.Mass),
    }.SelectMany(row => row.Names.Split('|').Select(name => (name, row.Kind)))
        .ToFrozenDictionary(row => row.name, row => row.Kind, StringComparer.Ordinal);

    /// <summary>Makes the context in which a quantity was asked by its name or by a unit of it.</summary>
    /// <param name="asked">
    /// Such as <c>resistance</c>, <c>supply voltage</c>, <c>gauge-pressure</c> or <c>kΩ</c>; empty or null when nothing
    /// was.
    /// </param>
    /// <returns>False if <paramref name="asked"/> names neither.</returns>
    public static bool TryContext(string? asked, [NotNullWhen(true)] out ReadingContext? context)
    {
        context = string.IsNullOrWhiteSpace(asked) ? ReadingContext.None
            : Named(asked) is { } kind
                ? ReadingContext.For(kind) with { Possible = IsDiode(asked) ? DiodeDrop : null }
            : Unit.TryParse(asked, out Unit? unit) ? ReadingContext.For(unit.Kind) with { DefaultUnit = unit }
            : null;
        return context is not null;
    }

    // What a meter drives a diode with; 450 on its display are millivolts (common practice, no source).
    private static readonly PossibleRange DiodeDrop = new(-5, 5);

    private static bool IsDiode(string asked) => asked.Contains("diode", StringComparison.OrdinalIgnoreCase);

    // The whole name first; then its last word that is a quantity: "suction line temperature".
    private static QuantityKind? Named(string asked)
    {
        string[] words = [.. asked.ToLowerInvariant().Split(' ', '-', '_').Select(word => word.Trim())];
        foreach (string name in words.Reverse().Prepend(string.Concat(words)))
        {
            if (Kinds.TryGetValue(name, out QuantityKind kind) || Kinds.TryGetValue(name.TrimEnd('s'), out kind))
            {
                return kind;
            }
        }
        return null;
    }
}
