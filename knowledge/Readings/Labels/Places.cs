using DxAssistant.Knowledge.Readings.Numbers;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Recognises where in the system or the building something was read: suction, "room sensor",
/// outdoor.</summary>
internal static class Places
{
    private static readonly string[] Parts =
        ["suction", "discharge", "liquid", "vapor", "vapour", "gas", "supply", "return", "coil", "pipe", "evaporator",
            "condenser", "defrost", "compressor", "fan", "bus", "superheat", "subcooling", "subcool"];

    private static readonly string[] Airs = ["room", "ambient", "indoor", "outdoor", "indoors", "outdoors", "inside",
        "outside", "here"];

    private static readonly string[] Sensors = ["sensor", "thermistor", "probe", "thermostat"];

    private static readonly string[] Numbered = ["pin", "terminal", "zone", "port"];

    private static readonly string[] Dropped = ["line", "air", "temp", "temperature", "pressure", "side"];

    /// <summary>The word names a part or place.</summary>
    public static bool IsPlace(string word) => Parts.Contains(word) || Airs.Contains(word) || word is "high" or "low";

    public static LabelMention? At(TokenList tokens, int first)
    {
        Token token = tokens[first];
        if (!token.IsWord)
        {
            return null;
        }
        string word = Name(token);
        if ((Sensors.Contains(token.Lower) || Numbered.Contains(token.Lower))
            && Identity(tokens, first + 1) is { } identity)
        {
            return Place(first, first + 2, $"{token.Lower} {identity}", LabelKind.Place);
        }
        bool side = token.Lower is "low" or "high" && tokens[first + 1].Is("side");
        bool head = token.Is("head") && (tokens[first + 1].IsNumber || tokens[first + 1].Is("pressure"));
        bool bus = token.Is("dc") && tokens[first + 1].Is("bus");
        bool air = Airs.Contains(word) || (word == "out" && tokens[first - 1].IsNumber);
        return side ? Place(first, first + 2, token.Lower + " side", LabelKind.Place)
            : bus ? Place(first, first + 2, "DC bus", LabelKind.Place)
            : head || air || Parts.Contains(word) ? Extended(tokens, first, air)
            : null;
    }

    // "pin 1 to pin 2" is a pair, and no place by itself.
    private static bool IsPairWord(Token token) => token.IsOneOf("-/&") || token.Lower is "to" or "and";

    // "sensor A 10k", "sensor 2 reads 10k": one letter or digit, and a number to come.
    private static string? Identity(TokenList tokens, int at)
    {
        Token token = tokens[at];
        bool pair = IsPairWord(tokens[at + 1]) || IsPairWord(tokens[at - 2]);
        bool letter = token.IsWord && token.Length == 1 && char.IsAsciiLetterUpper(token.Text[0])
            && token.Text is not ("I" or "K" or "M");
        bool digit = token.IsWhole && token.Length <= 2
            && (token.Length == 1 || Numbered.Contains(tokens[at - 1].Lower));
        bool more = Enumerable.Range(at + 1, 3).Any(later => tokens[later].IsNumber
            || NumberWords.SmallOf(tokens[later].Lower) is not null || tokens[later].Is("ol"));
        bool placed = tokens[at - 2].Lower is "on" or "at" or "from" or "for" or "of";
        return (letter || digit) && !pair && (more || placed) && !tokens[at].Glued ? token.Text : null;
    }

    private static LabelMention Extended(TokenList tokens, int first, bool air)
    {
        // "indoor coil" is one place.
        bool part = air && Parts.Contains(tokens[first + 1].Lower);
        string word = part ? $"{OneName(Name(tokens[first]))} {tokens[first + 1].Lower}" : OneName(Name(tokens[first]));
        int end = part ? first + 2 : first + 1;
        end += Dropped.Contains(tokens[end].Lower) ? 1 : 0;
        bool sensor = Sensors.Contains(tokens[end].Lower);
        return Place(first, sensor ? end + 1 : end, sensor ? $"{word} {tokens[end].Lower}" : word,
            air && !sensor && !part ? LabelKind.Air : LabelKind.Place);
    }

    // "the room's 72"
    private static string Name(Token token) => token.Lower.EndsWith("'s", StringComparison.Ordinal) ? token.Lower[..^2]
        : token.Lower;

    private static string OneName(string word) => word switch
    {
        "outside" or "outdoors" or "out" => "outdoor",
        "inside" or "indoors" => "indoor",
        "here" => "room",
        _ => word,
    };

    private static LabelMention Place(int first, int end, string text, LabelKind kind) => new(first, end, text, kind);
}
