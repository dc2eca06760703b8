using System.Text;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Units;

/// <summary>Finds the unit that begins at a token: glued, spaced, spelled out or letter by letter.</summary>
internal static class UnitScanner
{
    private const int MostTokens = 8;

    /// <summary>The longest unit that begins at a token; null if none does.</summary>
    /// <param name="isTaken">True for tokens that belong to a label, such as the C of "C to S".</param>
    public static UnitPhrase? At(TokenList tokens, int first, Func<int, bool> isTaken)
    {
        bool hyphen = tokens[first].Is('-') && tokens[first].Glued && tokens[first + 1].Glued
            && tokens[first + 1].IsWord;
        int start = hyphen ? first + 1 : first;
        var spelling = new StringBuilder();
        UnitPhrase? longest = null;
        for (int at = start; at < Math.Min(tokens.Count, start + MostTokens) && !isTaken(at)
            && Fold(tokens, at, start) is { } part; at++)
        {
            spelling.Append(part);
            if (part.Length > 0 && UnitLexicon.Find(spelling.ToString()) is { } entry)
            {
                longest = new UnitPhrase(entry, at + 1, tokens[start].Text, tokens[first].Glued, at + 1 < tokens.Count
                    && !isTaken(at + 1) && tokens[at + 1].IsWord ? tokens[at + 1].Lower : "");
            }
        }
        return longest;
    }

    private static string? Fold(TokenList tokens, int at, int start)
    {
        Token token = tokens[at];
        bool joins = at > start && token.Glued && tokens[at + 1].Glued;
        return token.Kind switch
        {
            TokenKind.Word => FoldWord(token.Lower),
            TokenKind.Code => IsUnit(token.Lower) ? token.Lower : null,
            TokenKind.Symbol when token.Is('°') => "deg",
            TokenKind.Symbol when Squared(token.Text) is { } unit => unit,
            TokenKind.Symbol when token.Text is "%" or "#" or "\"" or "/" or "'" => token.Text,
            TokenKind.Symbol when (token.Is('.') || token.Is('-')) && joins => "",
            _ => null,
        };
    }

    // Letters and digits that are a unit (m3/h), or end one (kg/cm2, inches of h2o).
    private static bool IsUnit(string code) => code is "cm2" or "h2o" or "in2" || UnitLexicon.Find(code) is not null;

    // Units, or parts of them, that some keyboards give as one character.
    private static string? Squared(string symbol) => symbol switch
    {
        "²" => "2",
        "³" => "3",
        "℃" => "degc",
        "℉" => "degf",
        "㏀" => "kohm",
        "㏁" => "megohm",
        "㎷" => "mv",
        "㎸" => "kv",
        "㎃" => "ma",
        "㎂" => "ua",
        "㎌" => "uf",
        "㎋" => "nf",
        "㎪" => "kpa",
        "㎫" => "mpa",
        "㎐" => "hz",
        "㎾" => "kw",
        _ => null,
    };

    private static string FoldWord(string word) => word is "degree" or "degrees" or "degs" or "grad" or "grados"
        ? "deg"
        : (word.EndsWith("'s", StringComparison.Ordinal) ? word.Remove(word.Length - 2, 1) : word)
            .Replace("ω", "ohm", StringComparison.Ordinal).Replace("µ", "u", StringComparison.Ordinal);
}
