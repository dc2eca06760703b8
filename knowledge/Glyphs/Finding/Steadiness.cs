using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>Whether a code was said to flash.</summary>
internal static class Steadiness
{
    private static readonly Regex OnAndOff = new(
        @"\b(?:on (?:and|&|n|then) off|off (?:and|&|n|then) on|comes and goes|on[ -]off)\b(?! \d| \w+ times)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex AllTheTime = new(@"\b(?:all the time|not go(?:ing)? (?:out|away))\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>True for "flashing", false for "steady" or "not flashing", null if not said.</summary>
    public static bool? In(TokenList tokens)
    {
        if (OnAndOff.IsMatch(tokens.Message))
        {
            return true;
        }
        bool? flashing = null;
        for (int at = 0; at < tokens.Count; at++)
        {
            string word = tokens[at].Lower;
            bool flashes = word is "flashing" or "flashes" or "flash" or "flashed" or "blinking" or "blinks"
                or "blink" or "pulsing" or "pulses" or "winking" or "winks" or "strobing" or "flickering";
            bool steady = word is "steady" or "solid" or "solidly" or "constant" or "constantly" or "steadily"
                or "continuous" or "continuously"
                or "permanent" or "permanently" or "fixed" or "stays" or "always";
            bool negated = tokens[at - 1].Lower is "not" or "isn't" or "no" or "doesn't" or "without" or "never"
                || tokens[at - 2].Lower is "not" or "isn't" or "doesn't";
            flashing = flashes ? !negated : steady && flashing is null ? negated ? null : false : flashing;
        }
        return flashing ?? (AllTheTime.IsMatch(tokens.Message) ? false : null);
    }
}
