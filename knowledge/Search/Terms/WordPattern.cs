using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Requests;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>
/// Wordings to look for: alternatives separated by commas, each of one or more words; "_" stands for any one word, "#"
/// for a number.
/// </summary>
internal sealed class WordPattern
{
    public const string Any = "_";
    public const string Number = "#";
    private readonly ImmutableArray<ImmutableArray<string>> alternatives;
    private readonly Dictionary<string, ImmutableArray<string>[]> byFirst;
    private readonly ulong marks;

    public WordPattern(string alternatives)
    {
        this.alternatives =
        [
            .. alternatives.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Select(way => way.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).ToImmutableArray()),
        ];
        byFirst = this.alternatives.GroupBy(way => way[0], StringComparer.Ordinal)
            .ToDictionary(first => first.Key, first => first.ToArray(), StringComparer.Ordinal);
        foreach (var first in byFirst.Keys)
            marks |= MarkOf(first);
    }

    /// <summary>
    /// One of 64 bits. Keys with other bits than those of all first words begin no wording: most need not be looked up.
    /// </summary>
    public static ulong MarkOf(string key) =>
        1UL << ((key[0] + (7 * key[^1]) + (13 * key[key.Length / 2]) + (31 * key.Length)) & 63);

    /// <summary>The words that the alternatives begin with, as <see cref="RequestWords.KeysAt"/> names them.</summary>
    public IEnumerable<string> Firsts => byFirst.Keys;

    /// <summary>Where the wordings stand: first and last word of each.</summary>
    public IEnumerable<(int First, int Last)> In(RequestWords request)
    {
        for (var at = 0; at < request.Count; at++)
        {
            if ((request.MarksAt(at) & marks) == 0)
                continue;
            foreach (var key in request.KeysAt(at))
            {
                foreach (var way in byFirst.GetValueOrDefault(key, []))
                {
                    if (Stands(way, request, at))
                        yield return (at, at + way.Length - 1);
                }
            }
        }
    }

    /// <summary>Every single word that takes part.</summary>
    public IEnumerable<string> Words =>
        alternatives.SelectMany(way => way).Where(word => word[0] != '=' && word is not (Any or Number));

    /// <summary>Whether any of the wordings stands anywhere.</summary>
    public bool IsIn(RequestWords request)
    {
        for (var at = 0; at < request.Count; at++)
        {
            if ((request.MarksAt(at) & marks) == 0)
                continue;
            foreach (var key in request.KeysAt(at))
            {
                foreach (var way in byFirst.GetValueOrDefault(key, []))
                {
                    if (Stands(way, request, at))
                        return true;
                }
            }
        }
        return false;
    }

    private static bool Stands(ImmutableArray<string> way, RequestWords request, int at)
    {
        if (at + way.Length > request.Count)
            return false;
        for (var i = 0; i < way.Length; i++)
        {
            if (!request.Is(at + i, way[i]))
                return false;
        }
        return true;
    }
}
