using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Glyphs.Finding;

namespace DxAssistant.Knowledge.Glyphs.Spelling;

/// <summary>
/// A whole code that was read from a display standing on its head: every character turned, the last one first.
/// </summary>
internal static class TurnedCode
{
    private static readonly Regex OnItsHead = new(
        @"\bup ?side[ -]?down\b|\bstand(?:ing|s)? on (?:its|it's|my) head\b|\bwrong way (?:up|round)\b|\binverted\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Whether a message says that what it tells was read upside down.</summary>
    public static bool IsMeant(string text) => OnItsHead.IsMatch(text);

    /// <param name="code">In the canonical form, where B and D stand for what displays draw as b and d.</param>
    public static string Turn(string code) =>
        string.Concat(code.Reverse()
            .Select(sign => DescribedShapes.UpsideDown(sign is 'B' or 'D' ? char.ToLowerInvariant(sign) : sign)));
}
