using System.Text.RegularExpressions;

namespace DxAssistant.Knowledge.Tests.Exchange;

/// <summary>Parts a text in the DOT language into its words.</summary>
/// <remarks>
/// Source: "The DOT Language", graphviz.org, doc/info/lang.html. An ID is a name of letters, digits and underscores
/// that does not begin with a digit, a number, or a string in double quotes in which only the quote is escaped and a
/// backslash joins lines. Keywords are independent of case. Not read: strings of HTML, strings joined by "+", lines of
/// a preprocessor.
/// </remarks>
internal static partial class DotTokens
{
    private static readonly string[] Keywords = ["node", "edge", "graph", "digraph", "subgraph", "strict"];

    /// <exception cref="FormatException">A character begins no word of the language.</exception>
    public static List<DotToken> Of(string text)
    {
        var tokens = new List<DotToken>();
        for (int at = 0; at < text.Length;)
        {
            Match word = Word().Match(text, at);
            if (!word.Success)
                throw new FormatException($"no word of the language: {text[at..Math.Min(text.Length, at + 20)]}");
            at += word.Length;
            if (Token(word) is { } token) tokens.Add(token);
        }

        return tokens;
    }

    private static DotToken? Token(Match word)
    {
        if (word.Groups["space"].Success) return null;
        if (word.Groups["quoted"].Success) return new DotToken(Unquoted(word.Groups["quoted"].Value), true);
        bool isKeyword = Keywords.Contains(word.Value, StringComparer.OrdinalIgnoreCase);
        if (isKeyword) return new DotToken(word.Value.ToUpperInvariant(), false);
        return new DotToken(word.Value, word.Groups["name"].Success || word.Groups["number"].Success);
    }

    private static string Unquoted(string quoted) => quoted
        .Replace("\\\r\n", "", StringComparison.Ordinal).Replace("\\\n", "", StringComparison.Ordinal)
        .Replace("\\\"", "\"", StringComparison.Ordinal);

    [GeneratedRegex("""
        \G(?:(?<space>\s+|//[^\n]*|/\*.*?\*/)
        |"(?<quoted>(?:[^"\\]|\\.)*)"
        |(?<number>-?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?))
        |(?<name>[a-zA-Z_\u0080-\uffff][a-zA-Z_0-9\u0080-\uffff]*)
        |->|--|[{}\[\];,=:])
        """, RegexOptions.IgnorePatternWhitespace | RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
