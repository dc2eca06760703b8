using System.Globalization;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>
/// What a bare mains voltage in a complaint says, before anything is known of the unit: "only 196 volts" is low.
/// </summary>
internal static class MainsVoltage
{
    // Source: IEC 60038, 230 V and its limits of ±10 % (from memory).
    private const double Least = 207;
    private const double Most = 253;

    // Outside of these it is no mains voltage of this size: a 120 V leg, a 400 V system, a bus.
    private const double LeastMeant = 150;
    private const double MostMeant = 300;

    private static readonly string[] Units = ["v", "volt", "volts", "vac"];
    private static readonly string[] Places = ["isolator", "disconnect", "socket", "incoming", "mains", "supply",
        "legs", "leg", "volts", "voltage", "grid", "rotary"];
    private static readonly string[] OtherUnits = ["psi", "kpa", "psig", "microns", "micron", "ohms", "ohm", "hz",
        "rpm", "feet", "m", "meters", "meg", "k", "c", "f"];
    private static readonly string[] Direct = ["dc", "bus", "vdc", "direct"];

    /// <summary>"low" or "high" for a number at a place that is a mains voltage out of its limits; else null.</summary>
    public static string? Says(IReadOnlyList<string> words, int at)
    {
        if (!char.IsAsciiDigit(words[at][0]) || !HasUnit(words, at) || IsDirect(words, at)
            || !double.TryParse(words[at], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var volts))
            return null;
        return volts switch
        {
            >= LeastMeant and < Least => "low",
            > Most and <= MostMeant => "high",
            _ => null,
        };
    }

    /// <summary>A unit follows, or the message speaks of where mains is measured ("194 at the isolator").</summary>
    private static bool HasUnit(IReadOnlyList<string> words, int at) =>
        (at + 1 < words.Count && Units.Contains(words[at + 1]))
            || (words[at].Length == 3 && words.Any(Places.Contains)
                && !words.Skip(at + 1).Take(1).Any(OtherUnits.Contains));

    private static bool IsDirect(IReadOnlyList<string> words, int at) =>
        Enumerable.Range(Math.Max(0, at - 4), 8).Any(i => i < words.Count && Direct.Contains(words[i]));
}
