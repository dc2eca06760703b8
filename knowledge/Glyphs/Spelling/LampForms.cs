using System.Text.RegularExpressions;

namespace DxAssistant.Knowledge.Glyphs.Spelling;

/// <summary>Counts of lamps as they are jotted down: "red1 green3", "red - 1".</summary>
internal static class LampForms
{
    private static readonly Regex Jotted = new(
        @"\b(?<lamp>green|red|amber|yellow|orange|blue|white|grn|yel)s?(?:\s+(?:led|lamp|light))?\s*[-–:=]?\s*(?<count>\d{1,2})\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Counted = new(
        @"\b(?:blinks|blink|blinked|flashes|flash|flashed|winks|winked|pulses|blips)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static string Mend(string text) => Jotted.Replace(text, "${lamp} ${count}");

    /// <summary>Whether a message speaks of blinks as things that are counted, not of a code that blinks.</summary>
    public static bool TellsACount(string text) => Counted.IsMatch(text);
}
