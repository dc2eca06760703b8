using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Numbers;

/// <summary>Numbers in words, with "point", "and a half" and scales: "two point one", "half", "three
/// quarters".</summary>
internal static class SpokenNumber
{
    private const int MostDecimals = 9;

    /// <summary>Reads the number that begins at a token; null if none does.</summary>
    public static NumberPhrase? Read(TokenList tokens, int first)
    {
        Token token = tokens[first];
        if (!token.IsWord)
        {
            return null;
        }
        if (Part(tokens, first) is { } part)
        {
            return part;
        }
        bool pointFirst = NumberWords.IsPoint(token.Lower) && !tokens[first - 1].IsWord;
        bool oh = NumberWords.IsOh(token.Lower) && NumberWords.IsPoint(tokens[first + 1].Lower);
        NumberPhrase? whole = pointFirst ? new NumberPhrase(first, first, [0])
            : oh ? new NumberPhrase(first, first + 1, [0])
            : SpokenWhole.Read(tokens, first);
        if (whole is null)
        {
            return null;
        }
        NumberPhrase full = Extend(tokens, whole);
        return full.End == first ? null : full;
    }

    /// <summary>Takes what may follow a whole number: decimals, a half, a scale.</summary>
    public static NumberPhrase Extend(TokenList tokens, NumberPhrase whole)
    {
        bool parts = whole.Values is [var count] && count % 1 == 0
            && (count == 1 || tokens[whole.End].Lower.EndsWith('s'));
        if (parts && NumberWords.PartOf(tokens[whole.End].Lower) is { } part && tokens[whole.End].IsWord)
        {
            return whole with { End = OfAn(tokens, whole.End + 1),
                Values = [.. whole.Values.Select(value => value * part)] };
        }
        NumberPhrase full = AndPart(tokens, Decimals(tokens, whole));
        return NumberWords.ScaleOf(tokens[full.End].Lower) is { } scale && tokens[full.End].IsWord
            ? AndRest(tokens, full with { End = full.End + 1,
                Values = [.. full.Values.Select(value => value * scale)] }, scale)
            : full;
    }

    // "2 hundred 40", "2 hundred and 40"
    private static NumberPhrase AndRest(TokenList tokens, NumberPhrase round, double scale)
    {
        int at = tokens[round.End].Is("and") ? round.End + 1 : round.End;
        return tokens[at].IsWhole && tokens[at].Length <= 3
            && double.Parse(tokens[at].Text, CultureInfo.InvariantCulture) is var rest && rest < scale
            ? round with { End = at + 1, Values = [.. round.Values.Select(value => value + rest)] }
            : round;
    }

    // "half an ohm", "a quarter", "three quarters of an amp"
    private static NumberPhrase? Part(TokenList tokens, int first)
    {
        int at = first;
        double count = tokens[at].Lower is "a" or "an" ? 1 : NumberWords.SmallOf(tokens[at].Lower) ?? 0;
        at += count > 0 ? 1 : 0;
        // Alone, "third" and "tenth" are places in a row.
        bool ordinal = count == 0 && tokens[at].Lower is not ("half" or "quarter");
        if (ordinal || NumberWords.PartOf(tokens[at].Lower) is not { } part)
        {
            return null;
        }
        return new NumberPhrase(first, OfAn(tokens, at + 1), [Math.Max(count, 1) * part]);
    }

    private static int OfAn(TokenList tokens, int at)
    {
        at += tokens[at].Is("of") && tokens[at + 1].Lower is "a" or "an" ? 1 : 0;
        return tokens[at].Lower is "a" or "an" ? at + 1 : at;
    }

    private static NumberPhrase AndPart(TokenList tokens, NumberPhrase whole)
    {
        int at = whole.End;
        if (!tokens[at].Is("and"))
        {
            return whole;
        }
        at += tokens[at + 1].Lower is "a" or "one" ? 2 : 1;
        return NumberWords.PartOf(tokens[at].Lower) is { } part && tokens[at].IsWord
            ? whole with { End = at + 1, Values = [.. whole.Values.Select(value => value + part)] }
            : whole;
    }

    private static NumberPhrase Decimals(TokenList tokens, NumberPhrase whole)
    {
        int at = whole.End;
        if (!tokens[at].IsWord || !NumberWords.IsPoint(tokens[at].Lower) || whole.Values.IsEmpty
            || whole.Values[^1] % 1 != 0)
        {
            return whole;
        }
        var digits = new StringBuilder();
        int end = DecimalsEnd(tokens, at + 1, digits);
        return digits.Length == 0 ? whole
            : whole with { End = end, Spoken = NumberManner.Digits, Values = [Joined(whole.Values[^1], digits)] };
    }

    // By parsing rather than adding, so that "two point one" is exactly 2.1.
    private static double Joined(double whole, StringBuilder decimals) =>
        double.Parse(whole.ToString("F0", CultureInfo.InvariantCulture) + "." + decimals, CultureInfo.InvariantCulture);

    private static int DecimalsEnd(TokenList tokens, int at, StringBuilder digits)
    {
        if (tokens[at].IsWhole && tokens[at].Length <= MostDecimals)
        {
            digits.Append(tokens[at].Text);
            return at + 1;
        }
        while (digits.Length < MostDecimals && tokens[at].IsWord && Decimal(tokens[at].Lower) is { } value)
        {
            at++;
            int ones = value >= 20 && tokens[at].IsWord ? NumberWords.SmallOf(tokens[at].Lower) ?? 0 : 0;
            bool joined = ones is > 0 and < 10;
            digits.Append((value + (joined ? ones : 0)).ToString(CultureInfo.InvariantCulture));
            at += joined ? 1 : 0;
        }
        return at;
    }

    private static int? Decimal(string word) => NumberWords.IsOh(word) ? 0 : NumberWords.SmallOf(word);
}
