using System.Collections.Frozen;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>
/// Recognises two lamps that do the same without a count: "both lamps stay on", "red and green flash together".
/// </summary>
/// <remarks>
/// Only where the message tells nothing else: in a longer one the same words are no more than a remark.
/// </remarks>
internal static class LampsTogether
{
    private static readonly FrozenSet<string> Lamp = Set("lamp lamps light lights led leds");
    private static readonly FrozenSet<string> Lit =
        Set("on lit steady steadily solid solidly constant constantly stay stays staying burn burning glow glowing");
    private static readonly FrozenSet<string> Flash =
        Set("flash flashes flashing blink blinks blinking pulse pulses pulsing wink winking");
    private static readonly FrozenSet<string> Beside = Set(
        "the a are is of just only they all time together same at once without pause and it its my on both two with no");

    /// <summary>True when both flash, false when both are steady, null when it is not told, or more is told.</summary>
    public static bool? In(TokenList tokens)
    {
        if (!IsBoth(tokens)) return null;
        (bool lit, bool flash) = (false, false);
        for (int at = 0; at < tokens.Count; at++)
        {
            string word = tokens[at].Lower;
            if (Flash.Contains(word)) flash = true;
            else if (Lit.Contains(word)) lit = true;
            else if (!Lamp.Contains(word) && !Beside.Contains(word) && !BlinkFinder.Lamps.Contains(word)
                && word is not ("." or "," or "!"))
                return null;
        }

        return flash ? true : lit ? false : null;
    }

    // Both of them by number, or two colours by name.
    private static bool IsBoth(TokenList tokens)
    {
        string[] words = [.. Enumerable.Range(0, tokens.Count).Select(at => tokens[at].Lower)];
        bool named = words.Where(BlinkFinder.Lamps.Contains).Distinct(StringComparer.Ordinal).Count() == 2;
        return named || (words.Any(word => word is "both" or "two") && words.Any(Lamp.Contains));
    }

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);
}
