using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>A refrigerant.</summary>
/// <param name="Name">As the trade writes it: <c>R-410A</c>.</param>
/// <param name="Bubble">Where the last vapour condenses; subcooling is counted from it. Null when no curve is
/// held.</param>
/// <param name="Dew">Where the last liquid boils off; superheat is counted from it. Null when no curve is held.</param>
/// <param name="IsBlend">Bubble and dew differ.</param>
/// <param name="SafetyClass">By ASHRAE 34 and ISO 817.</param>
/// <param name="FlammableFrom">Lower flammability limit, kg/m³; null when it does not burn.</param>
public sealed record Refrigerant(
    string Name, SaturationCurve? Bubble, SaturationCurve? Dew, bool IsBlend, string SafetyClass, double? FlammableFrom,
        Citation Source)
{
    public static ImmutableArray<Refrigerant> All => Refrigerants.All;

    /// <summary>Finds a refrigerant: <c>R410A</c>, <c>R-410A</c>, <c>r 410a</c>, <c>410A</c>; null when it is not
    /// held.</summary>
    public static Refrigerant? Find(string? written)
    {
        var plain = Plain(written ?? "");
        return All.FirstOrDefault(refrigerant => Plain(refrigerant.Name) == plain);
    }

    /// <summary>One whose saturation curve is held, found as <see cref="Find"/> does; null otherwise.</summary>
    public static Refrigerant? FindCurved(string? written) => Find(written) is { Dew: not null } held ? held : null;

    /// <summary>The curve by its name, <c>bubble</c> or <c>dew</c>.</summary>
    public SaturationCurve? Curve(string name) => name == "bubble" ? Bubble : Dew;

    /// <summary>True when a word has the shape of a refrigerant's name, held or not.</summary>
    internal static bool LooksLikeOne(string written) =>
        Plain(written) is { Length: >= 2 } plain && char.IsAsciiDigit(plain[0]);

    private static string Plain(string written)
    {
        var letters = string.Concat(written.ToUpperInvariant().Where(char.IsLetterOrDigit));
        return letters.StartsWith('R') ? letters[1..] : letters;
    }
}
