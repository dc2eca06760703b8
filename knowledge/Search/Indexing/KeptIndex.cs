using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>
/// The search index made last, for pages of which the search reads the same: most edits change no word of title,
/// summary or wordings, and making an index is the dearest part of a new version.
/// </summary>
internal sealed class KeptIndex
{
    private readonly Lock gate = new();
    private (string Read, WeakReference<SearchIndex> Index)? last;

    /// <summary>What all matchers share.</summary>
    public static KeptIndex Shared { get; } = new();

    /// <summary>The index of these entries and groups, made only if the last one was of others.</summary>
    /// <returns>Null until the last step, which gives the index.</returns>
    public IEnumerable<SearchIndex?> Steps(ImmutableArray<SearchEntry> entries, ImmutableArray<SynonymGroup> glossary)
    {
        string read = PrintOf(entries, glossary);
        SearchIndex? index = Find(read);
        if (index is not null) yield return index;
        else foreach (SearchIndex? made in IndexMaking.Steps(entries, glossary))
        {
            if (made is not null) Keep(read, made);
            yield return made;
        }
    }

    private SearchIndex? Find(string read)
    {
        lock (gate) return last is { } kept && kept.Read == read && kept.Index.TryGetTarget(out SearchIndex? index)
            ? index
            : null;
    }

    private void Keep(string read, SearchIndex made)
    {
        lock (gate) last = (read, new WeakReference<SearchIndex>(made));
    }

    // Everything that is read, each piece with its end marked, as one hash.
    private static string PrintOf(ImmutableArray<SearchEntry> entries, ImmutableArray<SynonymGroup> glossary)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (SearchEntry entry in entries)
            Add(hash, [$"{entry.Kind}", entry.Id, entry.Title, entry.Body, .. entry.Phrases]);
        foreach (SynonymGroup group in glossary)
            Add(hash, [group.Concept, .. group.Synonyms, "", .. group.Misspellings]);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static void Add(IncrementalHash hash, ImmutableArray<string> pieces)
    {
        foreach (string piece in pieces) hash.AppendData(Encoding.UTF8.GetBytes(piece + "\u0001"));
        hash.AppendData("\u0002"u8);
    }
}
