using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>What a wording is made of, for learning: its terms, stems, pairs, and pieces of its words.</summary>
internal static class Features
{
    /// <summary>A pair of words, or a word as said, against a word of the glossary.</summary>
    private const float SideWeight = 0.5f;

    /// <summary>A piece of a word. Pieces know "condensing" from "condenser" where no list does, and bear slips of the thumb.</summary>
    private const float PieceWeight = 0.25f;

    /// <summary>Two words as said, one after the other: "can i", "do not".</summary>
    private const float RunWeight = 0.4f;

    private const int PieceLength = 4;

    /// <summary>Each feature once, by name, ordinal.</summary>
    public static ImmutableArray<(string Name, float Weight)> Of(TermBag bag) =>
    [
        .. bag.Terms.Select(term => ("term " + term.Key, (float)term.Value))
            .Concat(bag.Plain.Select(stem => ("stem " + stem, SideWeight)))
            .Concat(bag.Pairs.Select(pair => ("pair " + pair, SideWeight)))
            .Concat(bag.Row.Zip(bag.Row.Skip(1), (one, next) => $"run {one} {next}").Distinct(StringComparer.Ordinal).Select(run => (run, RunWeight)))
            .Concat(bag.Plain.SelectMany(Pieces).Distinct(StringComparer.Ordinal).Select(piece => ("piece " + piece, PieceWeight)))
            .OrderBy(feature => feature.Item1, StringComparer.Ordinal),
    ];

    private static IEnumerable<string> Pieces(string stem)
    {
        var whole = $"_{stem}_";
        for (var at = 0; at + PieceLength <= whole.Length; at++)
            yield return whole.Substring(at, PieceLength);
    }
}
