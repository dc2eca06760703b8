using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Drops the numbers that are no readings: counts, codes, dates, tolerances, what should be read.</summary>
internal sealed class Sieve(TokenList tokens, bool[] taken, ReadingContext context, Setting setting)
{
    // A word further back than this belongs to another thought.
    private const int ClauseReach = 6;

    private readonly Misgivings _misgivings = new(tokens, taken, context, setting);

    /// <summary>What is left, in order, and whether any was dropped because it says what should be read.</summary>
    public (List<Mention> Left, bool AnyExpected) Sift(List<Mention> mentions)
    {
        var left = new List<Mention>();
        bool anyExpected = false;
        int numberedEnd = 0;
        int expectedEnd = 0;
        for (int i = 0; i < mentions.Count; i++)
        {
            Mention mention = mentions[i];
            int reach = Math.Max(mention.First - ClauseReach, i > 0 ? mentions[i - 1].End : 0);
            bool expected = IsExpected(mention, reach)
                || (expectedEnd > 0 && left.Count == 0 && IsAt(mention, expectedEnd));
            expectedEnd = expected ? mention.End : 0;
            anyExpected |= expected && mention.State == ReadingState.Number;
            bool numbered = mention.State == ReadingState.Number && IsNumbered(mention, numberedEnd);
            numberedEnd = numbered ? mention.End : 0;
            if (!expected && !numbered && !IsSomethingElse(mention))
            {
                bool loose = mention.IsBare && mention.State == ReadingState.Number && IsFollowed(mention)
                    && !GoesOn(mention, i + 1 < mentions.Count ? mentions[i + 1] : null);
                left.Add(mention with { Doubt = _misgivings.About(mention), IsLoose = loose });
            }
        }
        return (left, anyExpected);
    }

    // "42.1 OL OL" on a form of three lines.
    private bool GoesOn(Mention mention, Mention? next) => context.Labels.Length > 1
        && next is { State: not ReadingState.Number } && next.First == mention.End;

    private bool IsSomethingElse(Mention mention) =>
        mention.State == ReadingState.Number
            && (IsTolerance(mention) || IsFigureOfSpeech(mention) || IsRefrigerant(mention)
            || (mention.IsBare && (IsDate(mention) || IsCount(mention))));

    private bool IsTolerance(Mention mention)
    {
        int before = mention.First - 1;
        bool words = tokens[before].Is("or") && tokens[before - 1].Is("plus");
        bool marks = tokens[before].Is('/') && tokens[before - 1].Is('+');
        return tokens[before].Is('±') || words || marks || (tokens[before].Is('-') && tokens[before - 1].Is('/'));
    }

    private bool IsFigureOfSpeech(Mention mention) =>
        mention.HasOwnUnit && mention.Units[0].Kind == QuantityKind.Ratio
            && Words.PartOf.Contains(tokens[mention.End].Lower);

    // 410A and 407C name refrigerants; nobody meets such a current or temperature.
    private bool IsRefrigerant(Mention mention) =>
        mention.Values is [22 or 32 or 134 or 290 or 404 or 407 or 410 or 448 or 449 or 454 or 507]
        && tokens[mention.Number + 1].Glued && tokens[mention.Number + 1].Lower is "a" or "b" or "c"
        && (mention.Values[0] > 100 || tokens[mention.First - 1].Lower is "r" or "freon" or "refrigerant");

    // "error 21", "pin 3", "#4"; with a unit only what could be a code of a display: "code 5C".
    private bool IsNumbered(Mention mention, int numberedEnd)
    {
        Token before = tokens[mention.First - 1];
        bool listed = mention.IsBare && numberedEnd > 0 && mention.First - numberedEnd <= 1
            && (before.IsOneOf(",-&/") || before.Lower is "and" or "to" or "or");
        bool numbered = listed || before.Is('#')
            || (before.IsWord && Words.Numbered.Contains(before.Lower) && !taken[mention.First - 1]);
        bool whole = tokens[mention.Number].IsWhole || tokens[mention.Number].IsWord;
        bool suffix = !mention.IsBare && tokens[mention.End - 1].Length == 1 && IsSuffixOf(before, mention);
        return numbered && whole && (mention.IsBare ? !IsAskedSensor(before) : suffix);
    }

    // "code 5C", "unit 5C"
    private bool IsSuffixOf(Token before, Mention mention) =>
        before.Lower is "code" or "codes" or "error" or "err" or "fault" or "alarm"
        || (context.Asked is null && tokens[mention.Number].Length == 1 && before.Lower is not ("sensor" or "gauge"));

    // "sensor 24" names a sensor or gives its temperature: that is asked, not dropped.
    private bool IsAskedSensor(Token before) => context.Asked is not null && before.Lower is "sensor" or "gauge";

    private bool IsDate(Mention mention) =>
        Words.Months.Contains(tokens[mention.First - 1].Lower) || Words.Months.Contains(tokens[mention.End].Lower);

    private bool IsCount(Mention mention)
    {
        Token next = tokens[mention.End];
        bool pronoun = tokens[mention.Number].Is("one")
            && (next.Is("of") || Words.BeforeOne.Contains(tokens[mention.First - 1].Lower));
        if (pronoun)
        {
            return true;
        }
        if (mention.End < tokens.Count && taken[mention.End])
        {
            return false;
        }
        bool glued = next.Glued && (next.IsWord || next.Kind == TokenKind.Code);
        return glued || (next.IsWord && Words.Counted.Contains(next.Lower))
            || (IsFollowed(mention) && context.Asked is null);
    }

    // A word that is no part of a report: it may be counted, or it may describe the reading.
    private bool IsFollowed(Mention mention)
    {
        Token next = tokens[mention.End];
        return next.IsWord && !(mention.End < taken.Length && taken[mention.End])
            && !Words.MayFollow.Contains(next.Lower) && !Words.To.Contains(next.Lower);
    }

    // "chart says 10k at 25C": the temperature belongs to what should be read.
    private bool IsAt(Mention mention, int end) => mention.First == end + 1
        && (tokens[end].Is("at") || tokens[end].Is('@'));

    private bool IsExpected(Mention mention, int reach)
    {
        // "9.8k spec 10k": the word belongs to the number that follows.
        Token next = tokens[mention.End];
        Token second = tokens[mention.End + 1];
        bool belongsToNext = Words.Rating.Contains(next.Lower)
            && (second.IsNumber || second.IsOneOf(":=") || second.Lower is "is" or "of" or "says");
        if (Words.ExpectedAfter.Contains(next.Lower) && !belongsToNext && IsFree(mention.End))
        {
            return true;
        }
        for (int at = mention.First - 1; at >= reach; at--)
        {
            Token token = tokens[at];
            if (token.IsOneOf(",;.\n(") || Words.ClauseEnd.Contains(token.Lower))
            {
                return false;
            }
            if (token.IsWord && !taken[at] && Words.ExpectedBefore.Contains(token.Lower))
            {
                return true;
            }
        }
        return false;
    }

    // No label holds the token.
    private bool IsFree(int at) => at >= taken.Length || !taken[at];
}
