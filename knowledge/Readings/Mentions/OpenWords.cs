using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>The forms of an open circuit.</summary>
internal static class OpenWords
{
    private static readonly string[] Mechanical = ["valve", "valves", "door", "window", "panel", "cover", "damper",
        "eev", "exv", "txv", "port", "ports", "lid", "louver", "vane"];

    private static readonly string[] VerbObjects = ["the", "a", "up", "it", "my", "your", "to", "this", "that", "and"];

    /// <summary>The end of the form, and whether it says an open circuit even when nothing was asked.</summary>
    public static (int End, bool IsPlain) At(TokenList tokens, int first, ReadingContext context, Setting setting)
    {
        bool asked = context.Asked is not null || setting.SpeaksOfResistance;
        Token token = tokens[first];
        Token next = tokens[first + 1];
        return token.Lower switch
        {
            "ol" or "ofl" or "overlimit" or "overrange" or "∞" or "infinity" => (first + 1, true),
            "o" or "0" when OverLoadEnd(tokens, first) is { } end => (end, true),
            "infinite" => (next.Lower is "resistance" or "ohms" ? first + 2 : first + 1, true),
            "inf" when asked => (first + 1, true),
            "over" when next.Lower is "limit" or "range" or "ranged" or "load" || next.Lower == "limits" =>
                (first + 2, next.Lower != "load"),
            "overload" or "overloaded" when context.Asks(QuantityKind.Resistance) => (first + 1, true),
            "out" when asked && next.Is("of") && tokens[first + 2].Is("range") => (first + 3, false),
            "no" when next.Lower is "continuity" => (first + 2, true),
            "no" when next.Lower is "beep" or "tone" && context.Asks(QuantityKind.Resistance) => (first + 2, true),
            "doesn't" or "doesnt" or "didn't" or "didnt" when next.Is("beep")
                && context.Asks(QuantityKind.Resistance) => (first + 2, true),
            "not" when next.Lower is "continuous" or "beeping" && asked => (first + 2, true),
            "open" => Open(tokens, first, asked),
            _ => (first, false),
        };
    }

    // O.L, 0L, 0.L, O L: letters or a zero, with or without points.
    private static int? OverLoadEnd(TokenList tokens, int first)
    {
        int at = tokens[first + 1].Is('.') && tokens[first + 1].Glued ? first + 2 : first + 1;
        bool letter = tokens[at].Is("l") && (tokens[first].IsWord || tokens[at].Glued);
        return !letter ? null : tokens[at + 1].Is('.') && tokens[at + 1].Glued && at > first + 1 ? at + 2 : at + 1;
    }

    private static (int End, bool IsPlain) Open(TokenList tokens, int first, bool asked)
    {
        string next = tokens[first + 1].Lower;
        if (next is "circuit" or "circuited" or "ckt" or "line" or "loop" or "winding")
        {
            return (first + 2, true);
        }
        string before = tokens[first - 1].Lower;
        string subject = before is "is" or "are" or "was" or "fully" or "wide" or "stuck" or "left"
            ? tokens[first - 2].Lower : before;
        bool moves = Mechanical.Contains(subject) || Mechanical.Contains(next) || VerbObjects.Contains(next);
        bool read = before is "reads" or "reading" or "read" or "shows" or "measures" or "measured" or "tests"
            or "ohms";
        return !moves && (asked || read || tokens.Count <= 3) ? (first + 1, read) : (first, false);
    }
}
