using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Labels;
using DxAssistant.Knowledge.Readings.Units;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Finds the unit of a number that came without one, from what was asked and where it was read.</summary>
internal sealed class BareNumbers(ReadingContext context, Gap gap, Surroundings around)
{
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
        bool air = mention.Label?.Kind == LabelKind.Air && context.Asked != QuantityKind.Temperature;
        bool temperature = air || (context.Asked != QuantityKind.Temperature && around.IsAt(mention)
            && before is { IsBare: false } && before.Units[0].Kind != QuantityKind.Temperature);
        if (temperature)
        {
            return Degrees(mention with { Units = Temperatures.Scales });
        }
        bool terminals = mention.Label is { NamesTerminals: true };
        bool listed = (before is { IsBare: false } && gap.IsTight(before, mention)) || (after is { IsBare: false } && gap.IsTight(mention, after));
        bool said = around.IsPlain || around.HasCue(mention) || terminals;
        bool othersHaveUnits = before is { IsBare: false } || after is { IsBare: false };
        if (!said && !(listed && othersHaveUnits))
        {
            return context.Asked is null || othersHaveUnits ? null : mention with { Units = DefaultUnits.Of(context), Doubt = Doubt.Unsure };
        }
        ImmutableArray<Unit> units = context.Asked is null ? [] : DefaultUnits.Of(context);
        Doubt doubt = mention.Doubt != Doubt.None ? mention.Doubt
            : units.IsEmpty ? Doubt.NoUnit
            : !terminals && othersHaveUnits && listed ? Doubt.Unsure
            : IsOverRange(mention, before, after) ? Doubt.OverRange
            : Doubt.None;
        return Degrees(mention with { Units = units, Doubt = doubt });
    }

    // Some meters show a lone 1 on the left for over range.
    private bool IsOverRange(Mention mention, Mention? before, Mention? after) =>
        context.Asked == QuantityKind.Resistance && before is null && after is null && mention.Values is [1] && mention.Label is null
        && mention.Manner == Numbers.NumberManner.Digits && mention.End - mention.Number == 1;

    private Mention Degrees(Mention mention)
    {
        bool scales = mention.Units.Length == 2 && mention.Units.All(Temperatures.Scales.Contains);
        return scales ? mention with { Units = Temperatures.Scale(mention, context) } : mention;
    }
}
