using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>The forms of a short circuit, a beep of the continuity tester among them.</summary>
internal static class ShortWords
{
    private static readonly string[] OtherShorts =
        ["cycling", "cycle", "cycles", "cycled", "on", "of", "time", "while", "run", "runs", "range", "notice",
            "answer", "by", "term", "stop", "story", "version", "lineset", "line"];

    private static readonly string[] Beepers = ["unit", "remote", "board", "alarm", "indoor", "outdoor", "thermostat",
        "display", "controller"];

    private static readonly string[] Havings = ["has", "have", "got", "good", "full", "there's", "yes", "is", "shows",
        "with", "perfect", "have", "had"];

    /// <summary>The end of the form, and whether it says a short even when nothing was asked.</summary>
    public static (int End, bool IsPlain) At(TokenList tokens, int first, ReadingContext context, Setting setting)
    {
        bool ohms = context.Asks(QuantityKind.Resistance);
        Token next = tokens[first + 1];
        return tokens[first].Lower switch
        {
            "dead" when next.Lower is "short" or "shorted" => (first + 2, true),
            "short" when next.Lower is "circuit" or "circuited" => (first + 2, true),
            "short" when (ohms || setting.SpeaksOfResistance) && !OtherShorts.Contains(next.Lower)
                && tokens[first - 1].Lower is not "too" => (ToGround(tokens, first + 1), false),
            "shorted" or "shorts" =>
                (ToGround(tokens, next.Lower is "out" or "together" ? first + 2 : first + 1), true),
            "beep" or "beeps" or "beeped" or "beeping" when ohms && !Beepers.Contains(tokens[first - 1].Lower)
                && !Beepers.Contains(tokens[first - 2].Lower)
                && !(next.Is("at") && tokens[first + 2].IsNumber) => (first + 1, false),
            "continuity" when ohms && IsGiven(tokens, first) => (first + 1, false),
            "continuous" when ohms => (first + 1, false),
            _ => (first, false),
        };
    }

    private static int ToGround(TokenList tokens, int at) => tokens[at].Is("to")
        && tokens[at + 1].Lower is "ground" or "earth" ? at + 2 : at;

    private static bool IsGiven(TokenList tokens, int first) => tokens.Count <= 2
        || Havings.Contains(tokens[first - 1].Lower);
}
