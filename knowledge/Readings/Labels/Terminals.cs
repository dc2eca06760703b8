using DxAssistant.Knowledge.Readings.Numbers;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Recognises motor, line and wire terminals without a form: U-V, "R to S", L1, L1-N, "black to
/// white".</summary>
internal static class Terminals
{
    private static readonly string[][] Families =
    [
        "u v w g pe ground earth gnd grd".Split(' '), "r s t g pe ground earth gnd grd".Split(' '),
            "c s r common start run ground gnd grd".Split(' '),
        "l1 l2 l3 l n g pe line neutral ground earth gnd grd".Split(' '), "t1 t2 t3 ground earth gnd grd".Split(' '),
        "black white red blue yellow orange brown green purple gray grey pink ground".Split(' '),
    ];

    private static readonly string[] Glued = ["UV", "VU", "VW", "WV", "UW", "WU"];

    public static LabelMention? At(TokenList tokens, int first)
    {
        Token token = tokens[first];
        if (token.Kind is not (TokenKind.Word or TokenKind.Code))
        {
            return null;
        }
        return Pair(tokens, first) ?? Line(tokens, first) ?? (OneToken(tokens, first) is { } text
            ? new LabelMention(first, first + 1, text, LabelKind.Terminal) : null);
    }

    private static string? OneToken(TokenList tokens, int at)
    {
        Token token = tokens[at];
        if (token.IsWord)
        {
            bool single = token.Text is "U" or "V" or "W"
                && tokens[at - 1].Lower is "on" or "at" or "terminal" or "phase" or "leg" or "winding";
            return single ? token.Text : Glued.Contains(token.Text) ? $"{token.Text[0]}-{token.Text[1]}" : null;
        }
        string[] ends = token.Lower.Split('-', '/');
        return ends.Length == 1 && token.Lower is "l1" or "l2" or "l3" ? token.Text.ToUpperInvariant()
            : ends.Length == 2 && AreOneFamily(ends[0], ends[1]) ? Name(ends[0], ends[1])
            : null;
    }

    private static LabelMention? Pair(TokenList tokens, int first)
    {
        if (!LabelParts.Joins(tokens, first + 1))
        {
            return null;
        }
        string one = LabelParts.Of(tokens[first]);
        string other = LabelParts.Of(tokens[first + 2]);
        return AreOneFamily(one, other) ? new LabelMention(first, first + 3, Name(one, other), LabelKind.Terminal)
            : null;
    }

    // "leg 1 118", "L two 121"
    private static LabelMention? Line(TokenList tokens, int first)
    {
        int? number = tokens[first + 1].IsWhole && tokens[first + 1].Length == 1 ? tokens[first + 1].Text[0] - '0'
            : NumberWords.SmallOf(tokens[first + 1].Lower);
        bool line = tokens[first].Lower is "leg" or "line" or "l" or "phase" && number is >= 1 and <= 3;
        int next = first + (tokens[first + 2].Lower is "is" or "reads" || tokens[first + 2].IsOneOf(":=") ? 3 : 2);
        bool valued = tokens[next].IsNumber || NumberWords.SmallOf(tokens[next].Lower) is not null
            || tokens[first - 1].Lower is "on" or "at";
        return line && valued ? new LabelMention(first, first + 2, $"L{number}", LabelKind.Terminal) : null;
    }

    private static bool AreOneFamily(string one, string other) =>
        one != other && Families.Any(family => family.Contains(one) && family.Contains(other));

    private static string Name(string one, string other) => $"{Name(one)}-{Name(other)}";

    private static string Name(string part) =>
        part is "gnd" or "grd" ? "ground" : part.Length <= 2 ? part.ToUpperInvariant() : part;
}
