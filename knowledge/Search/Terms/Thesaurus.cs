using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Clauses;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>The glossary, ready to be looked up in running text: the longest known wording wins.</summary>
internal sealed class Thesaurus
{
    /// <summary>
    /// The concept whose wordings mean nothing to this trade, though words of them do: "ground floor".
    /// </summary>
    private const string Everyday = "everyday words";

    private readonly Dictionary<string, ImmutableArray<string>> bySaid = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ImmutableArray<string>> byStem = new(StringComparer.Ordinal);
    private readonly HashSet<string> words = new(StringComparer.Ordinal);
    /// <summary>For the first word of each wording, and for its stem, how long the longest of them is.</summary>
    private readonly Dictionary<string, int> reach = new(StringComparer.Ordinal);

    public Thesaurus(IEnumerable<SynonymGroup> groups)
    {
        var ambiguous = new HashSet<string>(StringComparer.Ordinal);
        foreach (var group in groups.OrderBy(group => group.Concept, StringComparer.Ordinal))
        {
            var concept = group.Concept == Everyday ? [] : Terms(Words(group.Concept));
            foreach (var way in group.Synonyms.Concat(group.Misspellings).Prepend(group.Concept))
                Add(Words(way), concept, ambiguous);
            foreach (var way in group.Synonyms.Prepend(group.Concept))
                words.UnionWith(Words(way).Where(word => word.Length > 1));
        }
        foreach (var key in ambiguous)
            byStem.Remove(key);
    }

    /// <summary>Every word of the glossary but the misspellings.</summary>
    public IReadOnlyCollection<string> KnownWords => words;

    /// <summary>Whether the glossary has a word, alone or in a longer wording, misspellings included.</summary>
    public bool KnowsWord(string word) => words.Contains(word) || bySaid.ContainsKey(word);

    /// <summary>
    /// The concept said at a place, if any, and how many words it took; no concept but words taken: they mean nothing
    /// to this trade.
    /// </summary>
    /// <param name="said">The words of the text.</param>
    /// <param name="stems">Their stems.</param>
    public (ImmutableArray<string> Concept, int Length) Find(WordRow said, WordRow stems, int at)
    {
        var (ways, waysOfStems) =
            (bySaid.GetAlternateLookup<ReadOnlySpan<char>>(), byStem.GetAlternateLookup<ReadOnlySpan<char>>());
        var longest = Math.Max(reach.GetValueOrDefault(said[at]), reach.GetValueOrDefault(stems[at]));
        for (var length = Math.Min(longest, said.Length - at); length > 0; length--)
        {
            if (ways.TryGetValue(said.Run(at, length), out var concept)
                || ((length > 1 || !Fillers.Contains(said[at]))
                    && waysOfStems.TryGetValue(stems.Run(at, length), out concept)))
                return (concept, length);
        }
        return ([], 0);
    }

    private void Add(ImmutableArray<string> way, ImmutableArray<string> concept, HashSet<string> ambiguous)
    {
        if (way.IsEmpty)
            return;
        var stems = Stemmer.StemAll(way);
        foreach (var first in new[] { way[0], stems[0] })
            reach[first] = Math.Max(reach.GetValueOrDefault(first), way.Length);
        bySaid.TryAdd(string.Join(' ', way), concept);
        var stem = string.Join(' ', stems);
        if (byStem.TryGetValue(stem, out var other) && !other.SequenceEqual(concept))
            ambiguous.Add(stem);
        else
            byStem[stem] = concept;
    }

    /// <summary>"not turning" to "not~turn": a concept's words as they stand in the index.</summary>
    private static ImmutableArray<string> Terms(ImmutableArray<string> words)
    {
        ImmutableArray<string> meant = [.. words.Where(word => word == "not" || !Fillers.Contains(word))];
        var stems = Stemmer.StemAll(meant.IsEmpty ? words : meant);
        return meant is ["not", _, ..] ? [Token.NotMark + stems[1], .. stems[2..]] : stems;
    }

    private static ImmutableArray<string> Words(string text) =>
        [.. Negation.Normalize(WordSplitter.Split(text)).Select(word => word.Text)];
}
