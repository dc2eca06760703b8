using System.Collections.Immutable;
using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Whether a pair of terminals is the supply that a check asks for: L1-L2 is, L1-ground is not.</summary>
internal static class SupplyTerminals
{
    private const string Calculation = "supply-limits";

    private static readonly ImmutableArray<ImmutableArray<string>> Supplies = [["l1", "l2"], ["l", "n"]];

    private static readonly Regex Terminal = new(@"\b(?:L[1-3]?|N)\b", RegexOptions.CultureInvariant);

    // Where the page says between which terminals, only those are.
    public static bool AreOf(CheckPage page, ReadingField field, string label)
    {
        ImmutableArray<string> ends = [.. PlainWords.Of(label).Order(StringComparer.Ordinal)];
        string[] named = [.. Terminal.Matches(field.Where.Text).Select(found => found.Value.ToLowerInvariant())
            .Distinct().Order(StringComparer.Ordinal)];
        return page.Calculation == Calculation && PlainWords.Of(field.Label).Contains("supply")
            && Supplies.Any(supply => supply.SequenceEqual(ends)) && (named.Length == 0 || named.SequenceEqual(ends));
    }
}
