using System.Runtime.InteropServices;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Learning;

/// <summary>
/// What a wording is made of, for learning: its terms, stems, pairs, and pieces of its words, each with a number.
/// </summary>
internal sealed class Features
{
    /// <summary>A pair of words, or a word as said, against a word of the glossary.</summary>
    private const float SideWeight = 0.5f;

    /// <summary>
    /// A piece of a word. Pieces know "condensing" from "condenser" where no list does, and bear slips of the thumb.
    /// </summary>
    private const float PieceWeight = 0.25f;

    /// <summary>Two words as said, one after the other: "can i", "do not".</summary>
    private const float RunWeight = 0.4f;

    private const int PieceLength = 4;

    private readonly Dictionary<string, int> terms = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> stems = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> pairs = new(StringComparer.Ordinal);
    /// <summary>By the numbers of two stems.</summary>
    private readonly Dictionary<(int, int), int> runs = [];
    private readonly Dictionary<string, int> pieces = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int[]> piecesOfStem = new(StringComparer.Ordinal);

    /// <summary>How many there are.</summary>
    public int Count { get; private set; }

    /// <summary>The features of a wording, each once; new ones get the next number.</summary>
    public (int Number, float Weight)[] Learn(TermBag bag) => Of(bag, true);

    /// <summary>Those features of a wording that have been learnt.</summary>
    public (int Number, float Weight)[] Known(TermBag bag) => Of(bag, false);

    private (int Number, float Weight)[] Of(TermBag bag, bool learns)
    {
        var found = new List<(int Number, float Weight)>(64);
        foreach (var (term, weight) in bag.Terms)
            Add(terms, term, (float)weight);
        foreach (var pair in bag.Pairs)
            Add(pairs, pair, SideWeight);
        var ofPieces = new HashSet<int>(PieceLength * bag.Row.Length);
        foreach (var stem in bag.Plain)
        {
            Add(stems, stem, SideWeight);
            ofPieces.UnionWith(PiecesOf(stem, learns));
        }
        foreach (var piece in ofPieces)
            found.Add((piece, PieceWeight));
        var ofRuns = new HashSet<int>(bag.Row.Length);
        var before = -1;
        foreach (var word in bag.Row)
        {
            var stem = stems.GetValueOrDefault(word, -1);
            if (before >= 0 && stem >= 0 && NumberOf(runs, (before, stem), learns) is >= 0 and var run
                && ofRuns.Add(run))
                found.Add((run, RunWeight));
            before = stem;
        }
        return [.. found];

        void Add(Dictionary<string, int> numbers, string what, float weight)
        {
            if (NumberOf(numbers, what, learns) is >= 0 and var number)
                found.Add((number, weight));
        }
    }

    private int[] PiecesOf(string stem, bool learns)
    {
        if (piecesOfStem.TryGetValue(stem, out var known))
            return known;
        var whole = $"_{stem}_";
        int[] made =
        [
            .. Enumerable.Range(0, Math.Max(0, whole.Length - PieceLength + 1))
                .Select(at => NumberOf(pieces, whole.Substring(at, PieceLength), learns)).Where(number => number >= 0),
        ];
        if (learns)
            piecesOfStem.Add(stem, made);
        return made;
    }

    /// <summary>−1 for what has not been learnt.</summary>
    private int NumberOf<T>(Dictionary<T, int> numbers, T what, bool learns) where T : notnull
    {
        if (!learns)
            return numbers.GetValueOrDefault(what, -1);
        ref var number = ref CollectionsMarshal.GetValueRefOrAddDefault(numbers, what, out var isKnown);
        return isKnown ? number : number = Count++;
    }
}
