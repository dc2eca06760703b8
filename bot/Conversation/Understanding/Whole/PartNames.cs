using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>The names of parts, and which repair changes each.</summary>
internal sealed class PartNames
{
    private const int MostOffered = 5;

    private readonly FrozenDictionary<string, string> _named;
    private readonly ImmutableArray<(ImmutableArray<string> Words, string Repair)> _parts;

    public PartNames(Library library, WordLists lists)
    {
        _parts =
        [
            .. from fault in library.Faults.Values
               where fault.Part is not null
               from repair in library.Graph.RepairsOf(fault.Id)
               where library.Repairs[repair.Id].Parts.Contains(fault.Part!)
               select (lists.Read(fault.Part!), repair.Id.Value),
        ];
        var named = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach ((ImmutableArray<string> words, string repair) in _parts) named.TryAdd(Key(words), repair);
        foreach (GlossaryEntry entry in library.Glossary)
            if (named.TryGetValue(Key(lists.Read(entry.Concept)), out string? repair))
                foreach (string alias in entry.AlsoSaidAs) named.TryAdd(Key(lists.Read(alias)), repair);
        _named = named.ToFrozenDictionary(StringComparer.Ordinal);
    }

    /// <summary>
    /// The repair that changes the one part that a clause names; null when it names none, or says more.
    /// </summary>
    public string? Named(ImmutableArray<string> clause) => _named.GetValueOrDefault(Key(Thing(clause)));

    /// <summary>
    /// The repairs that change parts whose names hold these words; empty when there are too many to ask about.
    /// </summary>
    public ImmutableArray<string> Like(ImmutableArray<string> clause)
    {
        ImmutableArray<string> thing = Thing(clause);
        ImmutableArray<string> like = thing.IsEmpty ? [] :
            [.. _parts.Where(part => thing.All(part.Words.Contains)).Select(part => part.Repair).Distinct()
                .Order(StringComparer.Ordinal)];
        return like.Length <= MostOffered ? like : [];
    }

    private static ImmutableArray<string> Thing(ImmutableArray<string> clause) =>
        [.. clause.Where(word => word != WordLists.Replaced)];

    private static string Key(ImmutableArray<string> words) => string.Join(' ', words.Order(StringComparer.Ordinal));
}
