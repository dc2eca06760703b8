using System.Collections.Immutable;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Numbers;

/// <summary>Whole numbers in words: "one hundred and twenty", "two oh eight", "one one eight", "twelve
/// hundred".</summary>
internal static class SpokenWhole
{
    // Longer runs of number words are no number that a meter shows.
    private const int MostWords = 12;

    /// <summary>Reads as many number words as belong together; null if there is none.</summary>
    public static NumberPhrase? Read(TokenList tokens, int first)
    {
        var words = new List<double>();
        int at = first;
        int end = first;
        while (words.Count < MostWords && Atom(tokens, at, words) is { } atom)
        {
            words.Add(atom);
            end = ++at;
            bool joined = tokens[at].Is('-') && tokens[at].Glued && words[^1] is >= 20 and < 100;
            bool and = tokens[at].Is("and") && words[^1] >= 100
                && NumberWords.SmallOf(tokens[at + 1].Lower) is not null;
            at += joined || and ? 1 : 0;
        }
        return words.Count == 0 ? null : Evaluate(words) with { First = first, End = end };
    }

    private static double? Atom(TokenList tokens, int at, List<double> before)
    {
        Token token = tokens[at];
        if (!token.IsWord)
        {
            return null;
        }
        bool article = before.Count == 0 && token.Lower is "a" or "an";
        return article ? (NumberWords.ScaleOf(tokens[at + 1].Lower) is null ? null : 1)
            : before.Count > 0 && NumberWords.IsOh(token.Lower) && NumberWords.SmallOf(tokens[at + 1].Lower) is < 10 ? 0
            : NumberWords.SmallOf(token.Lower) ?? (before.Count > 0 || token.Lower != "million"
                ? NumberWords.ScaleOf(token.Lower) : null);
    }

    private static NumberPhrase Evaluate(List<double> words)
    {
        var none = new NumberPhrase(0, 0, []);
        if (words.Any(word => word >= 100))
        {
            return WithScales(words) is { } large ? none with { Values = [large] } : none;
        }
        if (Below100(words, 0) is { } small)
        {
            return none with { Values = [small] };
        }
        if (words.Count > 3 && words.All(word => word < 10))
        {
            return none with { Values = [words.Aggregate(0.0, (sum, digit) => sum * 10 + digit)] };
        }
        bool digits = words.Count == 3 && words.All(word => word < 10);
        double? rest = digits ? words[1] * 10 + words[2] : Below100(words, 1) is >= 10 and { } tens ? tens : null;
        return words[0] is >= 1 and < 10 && rest is { } tail
            ? none with { Values = [words[0] + tail / 100, words[0] * 100 + tail], Spoken = NumberManner.ShortHundred }
            : none;
    }

    // The rest of the words from one on, if they make one number of up to two digits.
    private static double? Below100(List<double> words, int from) => (words.Count - from) switch
    {
        1 => words[from],
        2 when words[from] >= 20 && words[from + 1] is > 0 and < 10 => words[from] + words[from + 1],
        _ => null,
    };

    private static double? WithScales(List<double> words)
    {
        double total = 0;
        double current = 0;
        double last = double.MaxValue;
        foreach (double word in words)
        {
            bool fits = word >= 100 || last >= 100 || (last is >= 20 and < 100 && word is > 0 and < 10);
            if (!fits || (word >= 1000 && total > 0 && word >= total) || (word == 100 && current >= 100))
            {
                return null;
            }
            (total, current) = word switch
            {
                100 => (total, Math.Max(current, 1) * 100),
                > 100 => (total + Math.Max(current, 1) * word, 0),
                _ => (total, current + word),
            };
            last = word;
        }
        return total + current;
    }
}
