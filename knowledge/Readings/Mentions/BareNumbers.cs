using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Labels;
using DxAssistant.Knowledge.Readings.Text;
using DxAssistant.Knowledge.Readings.Units;
using Table = DxAssistant.Knowledge.Quantities.Units;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Finds the unit of a number that came without one, from what was asked and where it was read.</summary>
internal sealed class BareNumbers(TokenList tokens, ReadingContext context, Gap gap, Surroundings around)
{
    private const double WarmFahrenheit = 45;

    /// <summary>Settles the bare numbers of a message; those that are no readings are left out.</summary>
    public List<Mention> Settle(List<Mention> mentions)
    {
        var settled = new List<Mention>();
        for (int i = 0; i < mentions.Count; i++)
        {
            Mention mention = mentions[i];
            Mention? before = i > 0 ? mentions[i - 1] : null;
            Mention? after = i + 1 < mentions.Count ? mentions[i + 1] : null;
            Mention? kept = mention.IsBare ? Settle(mention, before, after) : Degrees(mention);
            if (kept is not null)
            {
                settled.Add(kept);
            }
        }
        return settled;
    }

    private Mention? Settle(Mention mention, Mention? before, Mention? after)
    {
        bool othersHaveUnits = before is { IsBare: false } || after is { IsBare: false };
        if (mention.Doubt == Doubt.None && IsTemperature(mention, before, othersHaveUnits))
        {
            return AsTemperature(mention);
        }
        bool beside = mention.Label is { NamesTerminals: true } || StandsBeside(mention);
        bool listed = (before is { IsBare: false } && gap.IsTight(before, mention))
            || (after is { IsBare: false } && gap.IsTight(mention, after));
        bool said = !mention.IsLoose && (around.IsPlain || around.HasCue(mention) || beside || IsNamed(mention));
        if (!said && !(listed && othersHaveUnits))
        {
            return context.Asked is null && !othersHaveUnits ? null : Loose(mention, othersHaveUnits);
        }
        ReadingContext line = Line(mention);
        ImmutableArray<Unit> units = line.Asked is null ? [] : MayBeDiode(mention, line)
            ? [Table.Volt, Table.MilliVolt]
            : DefaultUnits.Of(line);
        bool crowded = !beside && listed && (IsOfAsked(before) || IsOfAsked(after) || units.Length > 1);
        Doubt doubt = mention.Doubt != Doubt.None ? mention.Doubt
            : units.IsEmpty ? Doubt.NoUnit
            : line.IsMixed ? Doubt.WhichOne
            : crowded ? Doubt.Unsure
            : IsOverRange(mention, before, after) ? Doubt.OverRange
            : Doubt.None;
        return Degrees(mention with { Units = units, Doubt = doubt });
    }

    // Above every supply of a building here (IEC 60038: 400 V between phases, 10 % more) and in the range of a diode
    // drop, which many meters show in millivolts (common practice, no source). Where a form is open, its unit and range
    // decide.
    private const double HighestSupply = 440, HighestDrop = 999;

    private static bool MayBeDiode(Mention mention, ReadingContext line) =>
        line is { Asked: QuantityKind.Voltage, DefaultUnit: null, Possible: null }
        && mention.Label is null && mention.Values is [> HighestSupply and <= HighestDrop and var value]
        && value % 1 == 0;

    // Nothing was asked: then the message's own word for the quantity counts.
    private ReadingContext Line(Mention mention) =>
        IsNamed(mention) ? context with { Asked = NamedQuantity.Before(tokens, mention) } : context.Of(mention.Label);

    private bool IsNamed(Mention mention) =>
        context.Asked is null && NamedQuantity.Before(tokens, mention) is not null;

    private Mention Loose(Mention mention, bool othersHaveUnits) => Degrees(mention with
    {
        Units = DefaultUnits.Of(context.Of(mention.Label)),
        Doubt = mention.Doubt == Doubt.None ? Doubt.Unsure : mention.Doubt,
        IsLoose = mention.IsLoose || othersHaveUnits,
    });

    // "it's 72 in here", "2.1k at 24": a temperature beside the quantity that was asked.
    private bool IsTemperature(Mention mention, Mention? before, bool othersHaveUnits)
    {
        if (IsOnLine(mention) || context.Asked == QuantityKind.Temperature)
        {
            return IsOnLine(mention) && around.IsAt(mention)
                && context.Of(mention.Label).Asked == QuantityKind.Temperature;
        }
        bool air = mention.Label?.Kind == LabelKind.Air && (context.Asked is null || othersHaveUnits);
        bool at = around.IsAt(mention) && before is not null
            && (before.IsBare ? context.Asked == QuantityKind.Resistance
                : before.Units[0].Kind != QuantityKind.Temperature);
        return air || at;
    }

    // Sensor tables are in °C everywhere: "10k at 25" need not be 25 °F.
    private Mention AsTemperature(Mention mention)
    {
        Mention scaled = Degrees(mention with { Units = Temperatures.Scales });
        bool either = around.IsAt(mention) && scaled.Units is [var only] && only == Table.Fahrenheit
            && mention.Values[0] < WarmFahrenheit;
        return either ? mention with { Units = Temperatures.Scales } : scaled;
    }

    private bool IsOnLine(Mention mention) =>
        mention.Label is { } label && context.Fields.Any(field => field.Label == label.Text);

    private bool IsOfAsked(Mention? other) =>
        other is { IsBare: false } && context.Asked is { } asked
            && other.Units.Any(unit => Outcomes.Judged.AreAlike(unit.Kind, asked));

    // "suction 118", "room is 72"
    private static bool StandsBeside(Mention mention) =>
        mention.Label is { } label
            && (label.First >= mention.End ? label.First - mention.End : mention.First - label.End) <= 1;

    // Some meters show a lone 1 on the left for over range.
    private bool IsOverRange(Mention mention, Mention? before, Mention? after) =>
        context.Of(mention.Label).Asked == QuantityKind.Resistance && before is null && after is null
        && mention.Values is [1] && (mention.Label is null || IsOnLine(mention))
        && mention.Manner == Numbers.NumberManner.Digits && mention.End - mention.Number == 1;

    private Mention Degrees(Mention mention)
    {
        bool scales = mention.Units.Length == 2 && mention.Units.All(Temperatures.Scales.Contains);
        return scales ? mention with { Units = Temperatures.Scale(mention, context.Of(mention.Label)) } : mention;
    }
}
