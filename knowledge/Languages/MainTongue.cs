using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Languages;

/// <summary>
/// Puts number words, units and the names of signs into the words that the readers of readings and codes know.
/// </summary>
public sealed partial class MainTongue
{
    private readonly LanguagePage page;
    private readonly ImmutableArray<(string[] Words, string Means)> pairs;
    private readonly Dictionary<string, double> numbers;

    public MainTongue(LanguagePage page)
    {
        this.page = page;
        pairs = [.. page.Readings.Select(pair => (PlainLetters.Words(pair.Words).ToArray(), pair.Means))
            .Where(pair => pair.Item1.Length > 0).OrderByDescending(pair => pair.Item1.Length)];
        numbers = page.Numbers.GroupBy(pair => string.Concat(PlainLetters.Words(pair.Key)), StringComparer.Ordinal)
            .ToDictionary(same => same.Key, same => same.First().Value, StringComparer.Ordinal);
    }

    /// <summary>The message with those words put in the main language; the rest stands as it is.</summary>
    public string Heard(string text)
    {
        var said = new List<Said>();
        foreach (Match match in Piece().Matches(text.Length > 4_000 ? text[..4_000] : text))
        {
            IReadOnlyList<string> plain = PlainLetters.Words(match.Value);
            // Letters that touch a digit are a code or a unit, not a word: "A1", "2k".
            bool touches = (match.Index > 0 && char.IsDigit(text[match.Index - 1]))
                || (match.Index + match.Length < text.Length && char.IsDigit(text[match.Index + match.Length]));
            said.Add(new Said(match.Value, plain.Count == 1 && !touches ? plain[0] : null));
        }

        return string.Concat(Numbered(Paired(said)).Select(piece => piece.Text));
    }

    private List<Said> Paired(List<Said> said)
    {
        var heard = new List<Said>();
        for (int at = 0; at < said.Count;)
        {
            (int length, string? means) = PairAt(said, at);
            heard.Add(means is null ? said[at] : new Said(means, null));
            at += Math.Max(length, 1);
        }

        return heard;
    }

    // The longest wording that begins here; between its words stands one gap each.
    private (int Length, string? Means) PairAt(List<Said> said, int at)
    {
        foreach ((string[] words, string means) in pairs)
        {
            int length = (2 * words.Length) - 1;
            if (at + length <= said.Count
                && words.Select((word, place) => said[at + (2 * place)].Word == word).All(same => same))
                return (length, means);
        }

        return (0, null);
    }

    private List<Said> Numbered(List<Said> said)
    {
        var heard = new List<Said>();
        for (int at = 0; at < said.Count;)
        {
            int end = EndOfNumber(said, at);
            heard.Add(end == at ? said[at] : new Said(Value(said, at, end), null));
            at = end == at ? at + 1 : end;
        }

        return heard;
    }

    private int EndOfNumber(List<Said> said, int at)
    {
        int end = at;
        for (int next = at; next < said.Count && said[next].Word is { } word; next += 2)
        {
            if (numbers.TryGetValue(word, out double value) && (value >= 0 || (next > at && value == Point)))
                end = next + 1;
            else if (!(next > at && numbers.ContainsKey(word))) break;
        }

        return end > at && said[end - 1].Word is { } last && numbers[last] < 0 ? end - 2 : end;
    }

    // A word with the value -1 joins ("y"), one with -2 parts the fraction ("coma").
    private const double Point = -2;

    private string Value(List<Said> said, int from, int end)
    {
        double whole = 0, part = 0;
        string? fraction = null;
        for (int at = from; at < end; at += 2)
        {
            double value = numbers[said[at].Word!];
            if (value == Point) fraction = "";
            else if (value < 0) continue;
            else if (fraction is not null) fraction += value.ToString(CultureInfo.InvariantCulture);
            else if (value >= 1_000) (whole, part) = (whole + (Math.Max(part, 1) * value), 0);
            else part += value;
        }

        string number = (whole + part).ToString(CultureInfo.InvariantCulture);
        return fraction is { Length: > 0 } ? $"{number}.{fraction}" : number;
    }

    /// <summary>Figures of a calculation in the words of this language.</summary>
    public string Told(string figures)
    {
        string told = figures;
        foreach (WordPair pair in page.Figures)
            told = Regex.Replace(told, $@"(?<![\p{{L}}]){Regex.Escape(pair.Words)}(?![\p{{L}}])",
                pair.Means.Replace("$", "$$", StringComparison.Ordinal), RegexOptions.CultureInvariant);
        return page.DecimalComma ? Decimal().Replace(told, "$1,$2") : told;
    }

    private sealed record Said(string Text, string? Word);

    [GeneratedRegex(@"[\p{L}]+|[^\p{L}]+", RegexOptions.CultureInvariant)]
    private static partial Regex Piece();

    [GeneratedRegex(@"(?<![\d.])(\d+)\.(\d+)(?![\d.])", RegexOptions.CultureInvariant)]
    private static partial Regex Decimal();
}
