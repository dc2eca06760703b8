using System.Text;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>Changes texts: cuts, doubles, joins, and puts in what programs stumble over.</summary>
internal static class TextChanges
{
    /// <summary>The longest text made, in characters.</summary>
    public const int Longest = 20_000;

    private static readonly string[] Odd =
    [
        "\0", "\r\n", "\t", "\u001b[31m", "\ud800", "\udfff", "\ufeff", "\u202e", "\u2028", "\ufffd", "é", "e\u0301",
        "ﬁ", "İ", "ß", "Ω", "µ", "１２", "٣", "😀", "なに",
        "-0", "1e400", "-1e-400", "NaN", "Infinity", "9999999999999999999999", "0x7f", "1,2.3,4", "½", "%s%n", "{0}",
        "{{", "}}", "${x}", "$type", "__proto__",
        "<script>alert(1)</script>", "\"'`", "\\", "../../", "C:\\", "';--", "=1+1", "[", "]", "](", "](x", "![", "|",
        "||", "|-", "---", "---\n", "```", "> ", "- ", "# ", "* ", "1. ", "&#0;",
        "~~~", "<!--", "-->", "!!int", "&a", "*a", "? ", ": ", "not", "no", "between", "and", "to", "E5", "kΩ", "°F",
        "psi", "OL", "open", "why", "back",
    ];

    /// <summary>A changed text of the pool.</summary>
    /// <param name="longest">It is cut to so many characters.</param>
    public static string Make(Random random, IReadOnlyList<string> pool, int longest = Longest)
    {
        string text = pool[random.Next(pool.Count)];
        for (int times = random.Next(1, 5); times > 0; times--) text = Change(random, text, pool);
        return text.Length > longest ? text[..longest] : text;
    }

    private static string Change(Random random, string text, IReadOnlyList<string> pool)
    {
        var (from, length) = Span(random, text);
        return random.Next(10) switch
        {
            0 => text.Remove(from, length),
            1 => text.Insert(from, Odd[random.Next(Odd.Length)]),
            2 => text.Insert(from, Repeated(text.Substring(from, length), random.Next(2, 40))),
            3 => text.Insert(from, Repeated(Odd[random.Next(Odd.Length)], random.Next(2, 200))),
            4 => Joined(random, text[..from], pool[random.Next(pool.Count)]),
            5 => text.Insert(from, ((char)random.Next(0x3000)).ToString()),
            6 when text.Length > 0 =>
                new StringBuilder(text) { [random.Next(text.Length)] = (char)random.Next(32, 127) }.ToString(),
            7 => text.Insert(random.Next(text.Length + 1), text.Substring(from, length)),
            8 => Swapped(random, text, random.Next(2) == 0 ? ' ' : '\n'),
            _ =>
                text.Replace(text.Substring(from, Math.Min(length, 1)) is { Length: 1 } one ? one : " ",
                    Odd[random.Next(Odd.Length)], StringComparison.Ordinal),
        };
    }

    private static (int From, int Length) Span(Random random, string text)
    {
        int from = random.Next(text.Length + 1);
        return (from, random.Next(Math.Min(text.Length - from, 60) + 1));
    }

    private static string Repeated(string piece, int times) =>
        piece.Length * times > Longest ? piece : string.Concat(Enumerable.Repeat(piece, times));

    private static string Joined(Random random, string head, string other) =>
        head + other[random.Next(other.Length + 1)..];

    private static string Swapped(Random random, string text, char between)
    {
        string[] parts = text.Split(between);
        int one = random.Next(parts.Length), other = random.Next(parts.Length);
        (parts[one], parts[other]) = (parts[other], parts[one]);
        return string.Join(between, parts);
    }
}
