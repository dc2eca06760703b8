using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using Table = DxAssistant.Knowledge.Quantities.Units;

namespace DxAssistant.Knowledge.Readings.Outcomes;

/// <summary>What no meter of the trade shows, whatever was asked: wide bounds, common practice, no source.</summary>
internal static class Bounds
{
    /// <summary>What the kind can be at all, in its SI base.</summary>
    public static PossibleRange Of(QuantityKind kind) => kind switch
    {
        QuantityKind.Temperature => new(-100, 1_000),
        QuantityKind.TemperatureDifference => new(-200, 500),
        QuantityKind.Resistance => new(0, 1e13),
        QuantityKind.Voltage => new(-20_000, 20_000),
        QuantityKind.Current => new(-5_000, 5_000),
        QuantityKind.Capacitance => new(0, 1),
        QuantityKind.Ratio => new(0, 10),
        QuantityKind.GaugePressure => new(-101_325, 100e6),
        QuantityKind.Pressure => new(-101_325, 100e6),
        QuantityKind.AbsolutePressure => new(0, 100e6),
        _ => new(0, double.MaxValue),
    };

    /// <summary>The kind can be below zero.</summary>
    public static bool HasSign(QuantityKind kind) => Of(kind).Least < 0;

    /// <summary>The units of a kind that are mistaken for one another.</summary>
    public static ImmutableArray<Unit> Neighbors(QuantityKind kind) => kind switch
    {
        QuantityKind.Temperature => [Table.Celsius, Table.Fahrenheit],
        QuantityKind.TemperatureDifference => [Table.Kelvin, Table.FahrenheitDifference],
        QuantityKind.Resistance => [Table.Ohm, Table.KiloOhm, Table.MegaOhm],
        QuantityKind.Voltage => [Table.Volt, Table.MilliVolt, Table.KiloVolt],
        QuantityKind.Current => [Table.Ampere, Table.MilliAmpere],
        QuantityKind.Capacitance => [Table.MicroFarad, Table.NanoFarad],
        QuantityKind.GaugePressure => [Table.PsiGauge, Table.KiloPascalGauge, Table.BarGauge],
        QuantityKind.AbsolutePressure =>
            [Table.MicronOfMercury, Table.PascalAbsolute, Table.PsiAbsolute, Table.KiloPascalAbsolute],
        QuantityKind.Pressure => [Table.PoundPerSquareInch, Table.KiloPascal, Table.Bar],
        _ => [],
    };
}
