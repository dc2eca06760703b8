using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Wordings to look for: alternatives separated by commas, each of one or more words; "_" stands for any one word, "#" for a number.</summary>
internal sealed class WordPattern
{
    private const string Any = "_";
    private const string Number = "#";
    private readonly ImmutableArray<ImmutableArray<string>> alternatives;

    public WordPattern(string alternatives) =>
        this.alternatives =
        [
            .. alternatives.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Select(way => way.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).ToImmutableArray()),
        ];

    /// <summary>Where the wordings stand: first and last word of each.</summary>
    public IEnumerable<(int First, int Last)> In(RequestWords request)
    {
        for (var at = 0; at < request.Count; at++)
        {
            foreach (var way in alternatives)
            {
                if (Stands(way, request, at))
                    yield return (at, at + way.Length - 1);
            }
        }
    }

    /// <summary>Every single word that takes part.</summary>
    public IEnumerable<string> Words => alternatives.SelectMany(way => way).Where(word => word[0] != '=' && word is not (Any or Number));

    public bool IsIn(RequestWords request) => In(request).Any();

    private static bool Stands(ImmutableArray<string> way, RequestWords request, int at)
    {
        if (at + way.Length > request.Count)
            return false;
        for (var i = 0; i < way.Length; i++)
        {
            if (way[i] != Any && !(way[i] == Number ? request.IsNumber(at + i) : request.Is(at + i, way[i])))
                return false;
        }
        return true;
    }
}
