using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>Whether a code was said to flash.</summary>
internal static class Steadiness
{
    /// <summary>True for "flashing", false for "steady" or "not flashing", null if not said.</summary>
    public static bool? In(TokenList tokens)
    {
        bool? flashing = null;
        for (int at = 0; at < tokens.Count; at++)
        {
            string word = tokens[at].Lower;
            bool flashes = word is "flashing" or "flashes" or "flash" or "flashed" or "blinking" or "blinks"
                or "blink" or "pulsing";
            bool steady = word is "steady" or "solid" or "constant" or "constantly" or "steadily" or "continuous";
            bool negated = tokens[at - 1].Lower is "not" or "isn't" or "no" or "doesn't" or "without" or "never"
                || tokens[at - 2].Lower is "not" or "isn't" or "doesn't";
            flashing = flashes ? !negated : steady && flashing is null ? negated ? null : false : flashing;
        }
        return flashing;
    }
}
