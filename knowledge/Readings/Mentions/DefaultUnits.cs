using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Units;
using Table = DxAssistant.Knowledge.Quantities.Units;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>The units that a bare number can be in when a quantity was asked.</summary>
internal static class DefaultUnits
{
    /// <summary>The unit beside the field; else the only one in use; else all in use, likeliest first.</summary>
    public static ImmutableArray<Unit> Of(ReadingContext context) =>
        context.IsMixed ? [.. context.Fields.Select(field => field.Unit).Distinct()]
        : context.DefaultUnit is { } shown ? Shown(UnitChoice.OfKind([shown], context)[0], context.Market)
        : UnitChoice.OfKind(InUse(context), context);

    // A field in °C where people read °F: either may be meant.
    private static ImmutableArray<Unit> Shown(Unit shown, Market? market)
    {
        Unit read = MarketUnits.Of(shown, market);
        return read == shown || shown.Kind != QuantityKind.Temperature ? [shown] : [shown, read];
    }

    private static ImmutableArray<Unit> InUse(ReadingContext context) => context.Asked switch
    {
        QuantityKind.Resistance => [Table.Ohm, Table.KiloOhm, Table.MegaOhm],
        QuantityKind.Voltage => [Table.Volt],
        QuantityKind.Current => [Table.Ampere],
        QuantityKind.Power => [Table.Watt],
        QuantityKind.Capacitance => [Table.MicroFarad],
        QuantityKind.Frequency => [Table.Hertz],
        QuantityKind.RotationalSpeed => [Table.RevolutionsPerMinute],
        QuantityKind.Temperature => Temperatures.Scales,
        QuantityKind.TemperatureDifference => Differences(context.Market),
        QuantityKind.Ratio => [Table.Percent],
        // 350 can be microns or pascals, seven times as much.
        QuantityKind.AbsolutePressure => context.Market == Market.FahrenheitPsi ? [Table.MicronOfMercury]
            : [Table.MicronOfMercury, Table.PascalAbsolute],
        { } asked when asked.IsPressure() => Pressure(context.Market),
        _ => [],
    };

    private static ImmutableArray<Unit> Pressure(Market? market) => market switch
    {
        Market.FahrenheitPsi => [Table.PsiGauge],
        Market.CelsiusKilopascal => [Table.KiloPascalGauge],
        _ => [Table.PoundPerSquareInch, Table.KiloPascal, Table.Bar],
    };

    private static ImmutableArray<Unit> Differences(Market? market) => market switch
    {
        Market.FahrenheitPsi => [Table.FahrenheitDifference],
        Market.CelsiusKilopascal => [Table.Kelvin],
        _ => [Table.Kelvin, Table.FahrenheitDifference],
    };
}
