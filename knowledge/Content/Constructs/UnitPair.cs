using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Units of one quantity in the two systems that technicians use side by side.</summary>
/// <param name="Metric">Matches a figure in the one system.</param>
/// <param name="Other">Matches a figure in the other.</param>
internal sealed record UnitPair(string Quantity, Regex Metric, Regex Other)
{
    // Digits, also a range of them, before the unit, or a number word before a unit written out: "one in" is none.
    private const string Figure =
        @"(?<![\w.])(?:\d[\d.,]*(?: ?(?:to|and|–|-) ?\d[\d.,]*)?|(?:half a|one|two|three|four|five|six|eight|ten)(?= (?:met|feet|foot|inch|ft))) ?";

    // No further letter, power or product: m³/h is not a length. "in the", "in each" is the word and not the unit.
    private const string End =
        @"(?![\p{L}\d²³/·])(?! (?:the|a|an|all|each|both|every|its|your|turn|cooling|heating|front|another|one|some|place|series)\b)";

    public static ImmutableArray<UnitPair> All { get; } =
    [
        Of("temperature", "°C", "°F"),
        Of("pressure", "kPa|MPa|bar|Pa", "psig|psia|psi|microns?|inHg|inH2O"),
        Of("length", "mm|cm|m|metres?|meters?", "in|ft|inch|inches|foot|feet"),
        Of("mass", "kg|g", "lb|oz"),
        Of("torque", "N·m", "lbf·ft|ft·lbf|lbf·in|in·lbf"),
    ];

    /// <summary>True when a text gives a figure of the quantity in one of the systems only.</summary>
    public bool IsAloneIn(string text) => Metric.IsMatch(text) != Other.IsMatch(text);

    private static UnitPair Of(string quantity, string metric, string other) =>
        new(quantity, Unit(metric), Unit(other));

    private static Regex Unit(string units) => new($"{Figure}(?:{units}){End}", RegexOptions.CultureInvariant);
}
