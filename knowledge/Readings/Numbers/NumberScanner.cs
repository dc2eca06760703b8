using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Numbers;

/// <summary>Finds the number that begins at a token, in digits, words or both.</summary>
internal static class NumberScanner
{
    // Enough for any date, time or telephone number; a bound, so that the work stays in proportion to the message.
    private const int LongestChain = 9;

    private static readonly int[] Denominators = [2, 3, 4, 5, 8, 10, 16, 32];

    /// <summary>The number; null if none begins there. A date, a time or a version is one without values.</summary>
    public static NumberPhrase? At(TokenList tokens, int first) => tokens[first].Kind switch
    {
        TokenKind.Number => Chained(tokens, first) ?? Fractional(tokens, first) ?? SpaceGroups(tokens,
            first) ?? Digits(tokens, first),
        TokenKind.Fraction => new NumberPhrase(first, first + 1, [Folding.Fraction(tokens[first].Text[0])]),
        TokenKind.Word => SpokenNumber.Read(tokens, first),
        _ => null,
    };

    private static NumberPhrase Digits(TokenList tokens, int first)
    {
        ImmutableArray<double> values = DigitNumber.Values(tokens[first].Text);
        return SpokenNumber.Extend(tokens, new NumberPhrase(first, first + 1, values));
    }

    // 5/12/2026, 2026-05-12, 10:30, 555-010-1234: no reading comes in three such parts or with a colon.
    private static NumberPhrase? Chained(TokenList tokens, int first)
    {
        int end = first + 1;
        bool colon = false;
        while (end - first < LongestChain && tokens[end].Glued && tokens[end + 1].Glued && tokens[end + 1].IsWhole
            && tokens[end].IsOneOf("-/:"))
        {
            colon |= tokens[end].Is(':');
            end += 2;
        }
        bool date = end - first == 5 && tokens[first + 1].Text == tokens[first + 3].Text && tokens[first].Length <= 4
            && LooksLikeDate(tokens, first);
        return colon || date || end - first > 5 ? new NumberPhrase(first, end, []) : null;
    }

    private static bool LooksLikeDate(TokenList tokens, int first) =>
        tokens[first].IsWhole && Enumerable.Range(0, 3).All(i => tokens[first + 2 * i].Length is 1 or 2 or 4)
        && (tokens[first].Length == 4 || tokens[first + 4].Length is 2 or 4);

    // 1/2, 1 1/2, 1-1/2, 1½
    private static NumberPhrase? Fractional(TokenList tokens, int first)
    {
        if (FractionAt(tokens, first) is { } alone)
        {
            return new NumberPhrase(first, first + 3, [alone]);
        }
        if (!tokens[first].IsWhole || tokens[first].Length > 4)
        {
            return null;
        }
        double whole = double.Parse(tokens[first].Text, CultureInfo.InvariantCulture);
        int at = tokens[first + 1].Is('-') && tokens[first + 1].Glued ? first + 2 : first + 1;
        return tokens[at].Kind == TokenKind.Fraction
            ? new NumberPhrase(first, at + 1, [whole + Folding.Fraction(tokens[at].Text[0])])
            : FractionAt(tokens, at) is { } part && !tokens[at].Smudged
                ? new NumberPhrase(first, at + 3, [whole + part])
            : null;
    }

    private static double? FractionAt(TokenList tokens, int at)
    {
        bool shape = tokens[at].IsWhole && tokens[at + 1].Is('/') && tokens[at + 1].Glued && tokens[at + 2].IsWhole
            && tokens[at + 2].Glued
            && tokens[at].Length <= 2 && tokens[at + 2].Length <= 2
                && !(tokens[at + 3].Is('/') && tokens[at + 3].Glued);
        if (!shape)
        {
            return null;
        }
        int over = int.Parse(tokens[at].Text, CultureInfo.InvariantCulture);
        int under = int.Parse(tokens[at + 2].Text, CultureInfo.InvariantCulture);
        return over > 0 && over < under && Denominators.Contains(under) ? (double)over / under : null;
    }

    // 10 200 is ten thousand two hundred where people part thousands by a space; 230 231 229 is three values.
    private static NumberPhrase? SpaceGroups(TokenList tokens, int first)
    {
        int end = first + 1;
        while (end - first <= 3 && tokens[end].IsWhole && tokens[end].Length == 3 && !tokens[end].Glued
            && tokens[end].Start - tokens[end - 1].End == 1)
        {
            end++;
        }
        bool grouped = end - first is 2 or 3 && tokens[first].IsWhole && tokens[first].Length <= 2
            && tokens[first].Text[0] != '0';
        string digits = grouped ? string.Concat(Enumerable.Range(first, end - first).Select(at => tokens[at].Text))
            : "";
        return grouped ? new NumberPhrase(first, end, [double.Parse(digits, CultureInfo.InvariantCulture)],
            NumberManner.SpaceGroup) : null;
    }
}
