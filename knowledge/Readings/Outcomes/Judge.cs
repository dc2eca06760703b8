using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Labels;
using DxAssistant.Knowledge.Readings.Mentions;
using DxAssistant.Knowledge.Readings.Numbers;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Outcomes;

/// <summary>Lists what a mention can mean, and keeps what the measurement asked for can give.</summary>
/// <param name="context">Of the line that the mention stands on.</param>
internal sealed class Judge(TokenList tokens, ReadingContext context)
{
    public Judged Of(Mention mention)
    {
        ImmutableArray<Reading> all = [.. Readings(mention)];
        ImmutableArray<Reading> possible = [.. all.Where(IsPossible)];
        // Nothing is nothing in every unit.
        possible = possible.All(reading => reading.State == ReadingState.ShortCircuit) ? [.. possible.Take(1)]
            : possible;
        ImmutableArray<Reading> meanings = possible.IsEmpty ? [.. Suggestions(mention)] : possible;
        return new Judged(mention, Offered(mention, meanings), Reason(mention, possible));
    }

    private string? Reason(Mention mention, ImmutableArray<Reading> possible) => mention.Doubt switch
    {
        Doubt.Range => ReadingReason.Range,
        Doubt.Limit => ReadingReason.Limit,
        Doubt.NoUnit => ReadingReason.NoUnit,
        Doubt.OverRange => ReadingReason.OverRange,
        Doubt.WhichOne => ReadingReason.WhichOne,
        Doubt.Unsure => ReadingReason.Unsure,
        _ when mention.Units.IsEmpty => ReadingReason.NoUnit,
        _ when possible.IsEmpty => ReadingReason.Impossible,
        _ when mention.Units.Select(unit => unit.Kind).Distinct().Count() > 1 => ReadingReason.WhichUnit,
        _ when IsUndecided(mention) || MayBeList(mention) || MayBeTwo(mention) => ReadingReason.Separator,
        _ when possible.Length == 1 => null,
        _ when possible.Select(reading => reading.Unit).Distinct().Count() > 1 => mention.HasOwnUnit
            ? ReadingReason.WhichUnit : ReadingReason.NoUnit,
        _ when mention.Sign == Sign.Unclear && mention.Values.Length == 1 => ReadingReason.Sign,
        _ => ReadingReason.Separator,
    };

    private const double ListedWithin = 3;

    private ImmutableArray<Reading> Offered(Mention mention, ImmutableArray<Reading> meanings) => mention.Doubt switch
    {
        Doubt.OverRange => [.. meanings,
            new Reading(mention.Label?.Text, ReadingState.OpenCircuit, 0, mention.Units[0], Said(mention))],
        _ => meanings,
    };

    private IEnumerable<Reading> Readings(Mention mention)
    {
        if (mention.State != ReadingState.Number)
        {
            return [new Reading(Label(mention), mention.State, 0, mention.Units[0], Said(mention))];
        }
        bool great = mention.Manner == NumberManner.ShortHundred && !mention.Units.IsEmpty
            && mention.Units.All(unit => unit.Kind is not (QuantityKind.Resistance or QuantityKind.Current));
        return (from unit in mention.Units
                from value in great ? mention.Values.Skip(1) : mention.Values
                from signed in Signed(value, unit, mention)
                select Reading(signed, unit, mention)).Distinct();
    }

    private static IEnumerable<double> Signed(double value, Unit unit, Mention mention) => mention.Sign switch
    {
        Sign.Minus => [-value],
        Sign.Unclear when Bounds.HasSign(unit.Kind) && !DashFollowsLabel(unit, mention) => [value, -value],
        _ => [value],
    };

    // "L1 - 118"; but "outdoor air - 5" may be below zero.
    private static bool DashFollowsLabel(Unit unit, Mention mention) => mention.Label is { NamesTerminals: true }
        && unit.Kind is not (QuantityKind.Temperature or QuantityKind.TemperatureDifference);

    private Reading Reading(double value, Unit unit, Mention mention)
    {
        bool zero = value == 0 && unit.Kind == QuantityKind.Resistance;
        return new Reading(Label(mention), zero ? ReadingState.ShortCircuit : ReadingState.Number, zero ? 0
            : unit.ToSi(value), unit, Said(mention));
    }

    private bool IsPossible(Reading reading)
    {
        if (reading.State == ReadingState.OpenCircuit)
        {
            return true;
        }
        bool asked = reading.State == ReadingState.Number && IsAsked(reading.Unit);
        return double.IsFinite(reading.Value) && Bounds.Of(reading.Unit.Kind).Holds(reading.Value)
            && (!asked || context.Possible?.Holds(reading.Value) != false);
    }

    // What would have been possible: the same number in another unit.
    private IEnumerable<Reading> Suggestions(Mention mention) =>
        (from kind in mention.Units.Select(unit => unit.Kind).Distinct()
         from unit in Bounds.Neighbors(kind).Append(context.DefaultUnit).OfType<Unit>()
         from value in mention.Values
         where unit.Kind == kind && (mention.Sign != Sign.Minus || Bounds.HasSign(kind))
         select Reading(mention.Sign == Sign.Minus ? -value : value, unit, mention)).Where(IsPossible).Distinct();

    // Only the range of what was asked decides between 1.2 and 1200.
    private bool IsUndecided(Mention mention) => mention.Values.Length > 1 && mention.Manner == NumberManner.Digits
        && (context.Possible is null || !mention.Units.All(IsAsked));

    private bool IsAsked(Unit unit) => context.Asked is { } asked && Judged.AreAlike(asked, unit.Kind);

    // "118,121" is one number or two values, if both could be read here and lie close together or on two lines.
    private bool MayBeList(Mention mention)
    {
        string[] parts = tokens[mention.Number].Text.Split(',');
        return context.Possible is { } range && mention.Values.Length == 2 && parts.Length == 2
            && DigitNumber.Values(parts[0])[0] is var one && DigitNumber.Values(parts[1])[0] is var other
            && (context.Labels.Length > 1 || (one <= ListedWithin * other && other <= ListedWithin * one))
            && mention.Units.Any(unit => range.Holds(unit.ToSi(one)) && range.Holds(unit.ToSi(other)));
    }

    private bool MayBeTwo(Mention mention)
    {
        if (mention.Manner != NumberManner.SpaceGroup)
        {
            return false;
        }
        double first = DigitNumber.Values(tokens[mention.Number].Text)[0];
        double second = DigitNumber.Values(tokens[mention.Number + 1].Text)[0];
        return context.Possible is not { } range
            || !mention.Units.Any(unit => range.Holds(unit.ToSi(mention.Values[0])))
            || mention.Units.Any(unit => range.Holds(unit.ToSi(first)) && range.Holds(unit.ToSi(second)));
    }

    private static string? Label(Mention mention) => mention.Label is { Kind: not LabelKind.All } label ? label.Text
        : null;

    private string Said(Mention mention)
    {
        int first = mention.Label is { } label ? Math.Min(label.First, mention.First) : mention.First;
        int end = mention.Label is { } after ? Math.Max(after.End, mention.End) : mention.End;
        TextSpan span = tokens.Span(first, end);
        return span.Length <= LongestSaid ? tokens.Message.Substring(span.Start, span.Length) : Own(mention);
    }

    // A label far from its value is not quoted with everything between.
    private const int LongestSaid = 80;

    private string Own(Mention mention)
    {
        TextSpan span = tokens.Span(mention.First, mention.End);
        return tokens.Message.Substring(span.Start, Math.Min(span.Length, LongestSaid));
    }
}
