using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Mentions;
using Table = DxAssistant.Knowledge.Quantities.Units;

namespace DxAssistant.Knowledge.Readings.Units;

/// <summary>Decides what a spelling of a unit means where it stands.</summary>
internal static class UnitChoice
{
    /// <summary>The units it can mean, likeliest first; empty if it is no unit here but counts something
    /// else.</summary>
    public static ImmutableArray<Unit> Of(UnitPhrase phrase, ImmutableArray<double> values, ReadingContext context,
        Setting setting)
    {
        ImmutableArray<Unit> meanings = phrase.Entry.Use switch
        {
            UnitUse.IfAsked => [.. phrase.Entry.Meanings.Where(unit => context.Asks(unit.Kind))],
            UnitUse.Glued => phrase.Glued ? phrase.Entry.Meanings : [],
            UnitUse.Article => IsAmpere(phrase, values, context) ? phrase.Entry.Meanings : [],
            UnitUse.Always when context.Asks(QuantityKind.Capacitance) && phrase.Letters is "F" or "f" =>
                [Table.MicroFarad, Table.Fahrenheit],
            UnitUse.Pounds => Pounds(phrase, context, setting),
            UnitUse.LoneKilo => LoneKilo(phrase, values, context, setting),
            UnitUse.LoneMega => LoneMega(phrase, context, setting),
            UnitUse.MilliOrMega => MilliOrMega(phrase),
            _ => phrase.Entry.Meanings,
        };
        // A bare k where volts were asked stays both kV and kΩ; an F of a capacitor both µF and °F.
        bool two = meanings.Length == 2 && meanings[0].Kind != meanings[1].Kind;
        return phrase.Entry.Use == UnitUse.LoneKilo || two ? meanings : OfKind(meanings, context);
    }

    /// <summary>Narrows units to the kind asked where they can be of it: psi to a gauge pressure, °C to a
    /// difference.</summary>
    public static ImmutableArray<Unit> OfKind(ImmutableArray<Unit> units, ReadingContext context)
    {
        ImmutableArray<Unit> same = [.. units.Where(unit => context.Asks(unit.Kind))];
        return context.Asked is null || units.IsEmpty ? units
            : same.Length > 0 ? same
            : [.. units.Select(unit => Variant(unit, context))];
    }

    private static Unit Variant(Unit unit, ReadingContext context) =>
        context.Fields.Select(field => field.Unit.Kind).Prepend(context.Asked!.Value)
            .Select(kind => Unit.TryParse(unit.Symbol, kind, out Unit? variant) ? variant : null)
            .FirstOrDefault(variant => variant is not null) ?? unit;

    private static bool IsAmpere(UnitPhrase phrase, ImmutableArray<double> values, ReadingContext context) =>
        phrase.Glued || ((phrase.Following.Length == 0 || Words.MayFollow.Contains(phrase.Following))
            && (phrase.Letters == "A" || context.Asks(QuantityKind.Current)
            || (phrase.Following.Length == 0 && values.Any(value => value % 1 != 0))));

    private static ImmutableArray<Unit> Pounds(UnitPhrase phrase, ReadingContext context, Setting setting) =>
        context.Asked is { } asked && asked.IsPressure() ? [phrase.Entry.Meanings[0]]
        : context.Asks(QuantityKind.Mass) ? [phrase.Entry.Meanings[1]]
        : setting.SpeaksOfPressure ? [phrase.Entry.Meanings[0]] : [];

    // By custom "10k" is 10 kΩ; where another quantity was asked it could be that one's kilo.
    private static ImmutableArray<Unit> LoneKilo(UnitPhrase phrase, ImmutableArray<double> values,
        ReadingContext context, Setting setting)
    {
        ImmutableArray<Unit> ohms = phrase.Entry.Meanings;
        bool kelvin = phrase.Letters == "K" && values.All(value => value is >= 200 and <= 400);
        Unit.TryParse("K", QuantityKind.Temperature, out Unit? temperature);
        return context.Asked switch
        {
            _ when setting.SpeaksOfResistance || context.Asks(QuantityKind.Resistance) => ohms,
            null => kelvin ? [.. ohms, temperature!] : ohms,
            QuantityKind.TemperatureDifference => phrase.Letters == "K" ? [Table.Kelvin] : [Table.Kelvin, .. ohms],
            QuantityKind.Temperature => kelvin ? [.. ohms, temperature!] : ohms,
            QuantityKind.Voltage => [Table.KiloVolt, .. ohms],
            { } asked when asked.IsPressure() => [Table.KiloPascal, .. ohms],
            _ => ohms,
        };
    }

    private static ImmutableArray<Unit> LoneMega(UnitPhrase phrase, ReadingContext context, Setting setting) =>
        context.Asks(QuantityKind.Length) ? [Table.Meter]
        : !context.Asks(QuantityKind.Resistance) && !setting.SpeaksOfResistance ? []
        : phrase.Letters == "M" ? [phrase.Entry.Meanings[0]] : phrase.Entry.Meanings;

    private static ImmutableArray<Unit> MilliOrMega(UnitPhrase phrase)
    {
        bool exact = phrase.Letters is "mΩ" or "mW";
        bool ohm = phrase.Entry.Meanings[0] == Table.MegaOhm;
        return exact ? [phrase.Entry.Meanings[ohm ? 1 : 0]]
            : ohm && phrase.Letters[0] == 'M' ? [phrase.Entry.Meanings[0]]
            : phrase.Entry.Meanings;
    }
}
