using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Text;
using DxAssistant.Knowledge.Readings.Units;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Lets one unit serve a whole list: "U-V 1.1, V-W 1.2, U-W 1.1 ohms".</summary>
internal sealed class UnitSharing(TokenList tokens, bool[] taken, Gap gap, ReadingContext context, Setting setting)
{
    // Values of one list lie close together; 72 beside 10.2 kΩ is something else.
    private const double AlikeWithin = 3;

    private static readonly string[] PressurePlaces = ["suction", "discharge", "head", "liquid", "low side",
        "high side"];

    public void Share(List<Mention> mentions)
    {
        for (int i = 0; i < mentions.Count; i++)
        {
            if (mentions[i].IsBare && Ahead(mentions[i]) is { IsEmpty: false } ahead)
            {
                mentions[i] = mentions[i] with { Units = ahead, HasOwnUnit = true };
            }
        }
        for (int i = mentions.Count - 2; i >= 0; i--)
        {
            Pass(mentions, i + 1, i);
        }
        for (int i = 1; i < mentions.Count; i++)
        {
            Pass(mentions, i - 1, i);
        }
    }

    // "ohms 1.1", "volts: 118": a unit spelled out before the number.
    private System.Collections.Immutable.ImmutableArray<Unit> Ahead(Mention mention)
    {
        int at = mention.First - 1;
        at -= tokens[at].Is(':') || tokens[at].Is('=') || tokens[at].Is("is") ? 1 : 0;
        bool spelled = at >= 0 && !taken[at] && tokens[at].IsWord && tokens[at].Length >= 3 && !tokens[at - 1].IsNumber
            && !tokens[at].Glued;
        bool ownWord = spelled
            && (at == 0 || !(tokens[at - 1].IsWord && Numbers.NumberWords.SmallOf(tokens[at - 1].Lower) is not null));
        // "kilo ohms 10.2": the prefix stands before the word.
        UnitPhrase? phrase = !ownWord ? null : From(at - 1, mention, at + 1) ?? From(at, mention, at + 1);
        return phrase is null ? [] : UnitChoice.Of(phrase, mention.Values, context, setting);
    }

    private UnitPhrase? From(int at, Mention mention, int end) =>
        at >= 0 && UnitScanner.At(tokens, at, i => i >= mention.First || taken[i]) is { } phrase && phrase.End == end
            ? phrase : null;

    private bool IsShared(Mention one, Mention other, bool forward)
    {
        int gapLength = other.First - one.End;
        bool labelled = one.Label is not null && other.Label is not null;
        if (gapLength == 0)
        {
            // "4 7k" may be 4.7k: only what cannot be one number is a list without marks.
            return !forward && (labelled || (IsComplete(one) && IsComplete(other)));
        }
        Token last = tokens[other.First - 1];
        bool point = !labelled && last.Is('.');
        return !point && (labelled || !tokens[other.First].Glued || last.IsOneOf(",/-"));
    }

    private bool IsComplete(Mention mention) =>
        tokens[mention.Number].IsWord || tokens[mention.Number].Length >= 3;

    private void Pass(List<Mention> mentions, int from, int to)
    {
        Mention giver = mentions[from];
        Mention taker = mentions[to];
        (Mention one, Mention other) = from < to ? (giver, taker) : (taker, giver);
        if (taker.IsBare && giver.State == ReadingState.Number && !giver.Units.IsEmpty && gap.IsListed(one, other)
            && IsShared(one, other, from < to) && AreAlike(giver, taker, forward: from < to))
        {
            mentions[to] = taker with { Units = giver.Units };
        }
    }

    private bool AreAlike(Mention giver, Mention taker, bool forward)
    {
        if (giver.Label is { } one && taker.Label is { } other)
        {
            if (context.Of(one).Asked != context.Of(other).Asked)
            {
                return false;
            }
            return (one.NamesTerminals && other.NamesTerminals)
                || (!forward && giver.Units[0].Kind.IsPressure() && PressurePlaces.Contains(one.Text)
                    && PressurePlaces.Contains(other.Text));
        }
        double low = giver.Values.Min();
        double high = giver.Values.Max();
        return giver.Label is null && taker.Label is null && low > 0 && taker.Values[0] > 0
            && taker.Values.All(value => value / high <= AlikeWithin && low / value <= AlikeWithin);
    }
}
