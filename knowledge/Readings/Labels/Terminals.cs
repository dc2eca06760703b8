using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Recognises motor, line and wire terminals without a form: U-V, "R to S", L1, L1-N, "black to white".</summary>
internal static class Terminals
{
    private static readonly string[][] Families =
    [
        "u v w g pe ground earth".Split(' '), "r s t g pe ground earth".Split(' '), "c s r common start run ground".Split(' '),
        "l1 l2 l3 l n g line neutral ground earth".Split(' '), "t1 t2 t3 ground earth".Split(' '),
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
        return Pair(tokens, first) ?? (OneToken(token) is { } text ? new LabelMention(first, first + 1, text, LabelKind.Terminal) : null);
    }

    private static string? OneToken(Token token)
    {
        if (token.IsWord)
        {
            return Glued.Contains(token.Text) ? $"{token.Text[0]}-{token.Text[1]}" : null;
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
        return AreOneFamily(one, other) ? new LabelMention(first, first + 3, Name(one, other), LabelKind.Terminal) : null;
    }

    private static bool AreOneFamily(string one, string other) =>
        one != other && Families.Any(family => family.Contains(one) && family.Contains(other));

    private static string Name(string one, string other) => $"{Name(one)}-{Name(other)}";

    private static string Name(string part) => part.Length <= 2 ? part.ToUpperInvariant() : part;
}
