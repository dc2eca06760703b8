using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Outcomes;

/// <summary>From what every mention can mean to one result for the message.</summary>
internal sealed class Verdicts(TokenList tokens, ReadingContext context)
{
    private const int MostMeanings = 5;
    private const double ComparableWithin = 3;

    public ReadingResult Of(List<Judged> judged, bool anyExpected)
    {
        judged = WithoutIdleNumbers(judged);
        if (judged.Count == 0)
        {
            ImmutableArray<Unit> accepted = context.Asked is { } asked ? Bounds.Neighbors(asked) : [];
            return new ReadingResult.NotUnderstood(anyExpected ? ReadingReason.OnlyExpected : ReadingReason.NoReading,
                accepted);
        }
        List<Judged> plain = judged.FindAll(one => one.IsPlain);
        List<Judged> unclear = judged.FindAll(one => !one.IsPlain);
        if (unclear.Count == 0)
        {
            return Taken(plain, null);
        }
        return plain.Count > 0 && !AnyMatters(unclear, plain) ? Taken(plain, Ask(unclear))
            : Ask(WhatMatters(judged, unclear));
    }

    // "checked 2 and got 10.2k": the 2 is let go; "240 idle, 236 running" casts doubt on both.
    private static List<Judged> WithoutIdleNumbers(List<Judged> judged)
    {
        List<Judged> plain = judged.FindAll(one => one.IsPlain && one.Mention.State == ReadingState.Number);
        double least = plain.Count == 0 ? double.MaxValue
            : plain.Min(one => one.Mention.Values.Min()) / ComparableWithin;
        double most = plain.Count == 0 ? double.MinValue
            : plain.Max(one => one.Mention.Values.Max()) * ComparableWithin;
        return judged.FindAll(one => !one.IsLoose
            || (plain.Count > 0 && one.Mention.Values.Any(value => value == 0 || value % 1 != 0
            || (value >= least && value <= most))));
    }

    // An unclear value spoils the others if it could be one of them or what was asked.
    private bool AnyMatters(List<Judged> unclear, List<Judged> plain)
    {
        var kinds = plain.SelectMany(one => one.Meanings).Select(meaning => meaning.Unit.Kind).ToHashSet();
        bool askedIsPlain = context.Asked is not null && kinds.Any(context.AsksLike);
        bool terminals = !context.IsMixed && plain.Exists(NamesTerminals);
        return unclear.Exists(one =>
            (context.Asked is { } kind && one.CanBe(kind) && !(askedIsPlain && one.Reason == ReadingReason.NoUnit))
            || (terminals && NamesTerminals(one))
            || (context.Asked is not null && !askedIsPlain)
            || kinds.Any(one.CanBe));
    }

    private static bool NamesTerminals(Judged one) => one.Mention.Label is { NamesTerminals: true };

    private static List<Judged> WhatMatters(List<Judged> judged, List<Judged> unclear)
    {
        var kinds = unclear.SelectMany(one => one.Meanings).Select(meaning => meaning.Unit.Kind).ToHashSet();
        return judged.FindAll(one => !one.IsPlain || kinds.Count == 0 || kinds.Any(one.CanBe));
    }

    private ReadingResult.Readings Taken(List<Judged> plain, ReadingResult.AskBack? unclear) => new(
        [.. plain.Select(one => one.Meanings[0])],
        [.. plain.Select(one => tokens.Span(one.Mention.First, one.Mention.End))],
        unclear);

    private ReadingResult.AskBack Ask(List<Judged> judged)
    {
        string reason = judged.First(one => !one.IsPlain).Reason!;
        bool oneOf = reason is ReadingReason.Range or ReadingReason.WhichOne
            || judged.Exists(one => one.Reason == ReadingReason.WhichOne);
        bool anyLine = reason == ReadingReason.WhichOne && judged is [{ IsLabelled: false, Meanings.Length: 1 }]
            && context.Labels.Length > 1;
        bool onMixed = context.IsMixed && reason == ReadingReason.WhichOne;
        IEnumerable<Meaning> meanings = onMixed ? judged.SelectMany(one => one.Meanings).Select(OnItsLine)
            : anyLine ? Lines(judged[0].Meanings[0])
            : oneOf
            ? judged.SelectMany(one => one.Meanings).Select(reading => new Meaning([reading]))
            : Together(judged);
        return new ReadingResult.AskBack(reason, [.. meanings.Take(MostMeanings)]);
    }

    // One value on a form with several lines: on all of them, or on one.
    private IEnumerable<Meaning> Lines(Reading reading) =>
        context.Labels.Select(label => new Meaning([reading with { Label = label }]))
            .Prepend(new Meaning([.. context.Labels.Select(label => reading with { Label = label })]));

    // One value on a form of several kinds: the line whose unit it takes.
    private Meaning OnItsLine(Reading reading) => new([reading.Label is null
        && context.Fields.FirstOrDefault(field => field.Unit == reading.Unit) is { } field
            ? reading with { Label = field.Label } : reading]);

    // The same choice holds for all: whoever writes 1,200 for 1.2 writes 1,300 for 1.3.
    private static IEnumerable<Meaning> Together(List<Judged> judged)
    {
        List<Judged> some = judged.FindAll(one => !one.Meanings.IsEmpty);
        int most = some.Count == 0 ? 0 : Math.Min(some.Max(one => one.Meanings.Length), MostMeanings);
        return Enumerable.Range(0, most)
            .Select(choice => new Meaning([.. some.Select(one =>
                one.Meanings[Math.Min(choice, one.Meanings.Length - 1)])]));
    }
}
