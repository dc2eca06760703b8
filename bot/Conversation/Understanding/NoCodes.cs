using System.Text.RegularExpressions;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Numbers and letters in a message that are no display code: times, counts, terminals with a reading.</summary>
internal static partial class NoCodes
{
    /// <summary>The text with a blank for each sign of them, as long as it was.</summary>
    public static string Blanked(string text) => Known().Replace(text, found => new string(' ', found.Length));

    /// <summary>The text without the names of terminals that a reading follows.</summary>
    public static string WithoutTerminals(string text) => Terminals().Replace(text, " ");

    [GeneratedRegex(@"\bl[123](?=\s*(to|is|was|=|:|-)?\s*\d{2,})", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Terminals();

    // "the little green one", "after ten min", "2 numbers on it", "L1 120"
    [GeneratedRegex("""
        \b(\d+|one|two|three|four|five|six|seven|eight|nine|ten|fifteen|twenty|thirty)\s*(secs?|seconds?|mins?|minutes?|hrs?|hours?|days?|weeks?|months?|years?|numbers|digits|rooms|heads|units)\b
        |(?<=\b(the|that|this)\s+(\w+\s+){0,2})ones?\b(?!\s*(blink|flash|time))
        |\bl[123](?=\s*(to|is|was|=|:|-)?\s*\d{2,})
        """, RegexOptions.IgnoreCase | RegexOptions.IgnorePatternWhitespace | RegexOptions.CultureInvariant)]
    private static partial Regex Known();
}
