using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>The many ways of saying "not", brought down to the one word.</summary>
internal static class Negation
{
    private static readonly FrozenSet<string> Helpers = new[]
    {
        "do", "does", "did", "is", "are", "was", "were", "has", "had", "will", "would", "can", "could", "should",
        "be", "been", "to", "it", "even", "any", "have", "getting", "being", "anything", "ever", "really", "want",
        "wants", "going", "get", "gets", "seem", "seems", "appear",
        "sign", "signs", "trace", "evidence", "hint", "indication", "of",
    }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly string[] Articles = ["the", "a", "an", "my", "your", "our", "this", "that", "his"];

    private static readonly FrozenSet<string> Stops =
        new[] { "stopped", "stops", "quit", "quits", "ceased", "stop" }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Fails = new[]
    {
        "fails", "failed", "fail", "failing", "refuses", "refused", "refuse", "refusing", "unable", "unwilling",
        "struggles",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>
    /// "does not even spin", "quit spinning", "refuses to spin", "no longer spins" all become "not spin…".
    /// </summary>
    public static ImmutableArray<Word> Normalize(ImmutableArray<Word> words)
    {
        var plain = ImmutableArray.CreateBuilder<Word>(words.Length);
        for (var i = 0; i < words.Length; i++)
        {
            if (IsBothWays(words, i))
            {
                plain.Add(new Word("freely", words[i].StartsClause));
                i += 2;
                continue;
            }
            var taken = LengthOfNot(words, i);
            if (taken == 0)
            {
                plain.Add(words[i]);
                continue;
            }
            plain.Add(new Word("not", words[i].StartsClause));
            i += taken - 1;
            while (i + 2 < words.Length && Helpers.Contains(words[i + 1].Text) && !words[i + 1].StartsClause
                && !IsCausing(words, i + 1))
                i++;
        }
        return plain.ToImmutable();
    }

    /// <summary>"can't get the room warm": what follows is not ruled out, but does not come about.</summary>
    private static bool IsCausing(ImmutableArray<Word> words, int at) =>
        words[at].Text == "get" && Articles.Contains(words[at + 1].Text);

    /// <summary>"rather than the pump", "instead of the pump": what follows is ruled out as a part.</summary>
    private static bool IsInstead(ImmutableArray<Word> words, int at) =>
        at + 2 < words.Length && (words[at].Text, words[at + 1].Text) is ("rather", "than") or ("instead", "of")
            && Articles.Contains(words[at + 2].Text);

    /// <summary>"opens and closes" says of a valve or a switch what "freely" says.</summary>
    private static bool IsBothWays(ImmutableArray<Word> words, int at) =>
        at + 2 < words.Length && words[at + 1] is { Text: "and", StartsClause: false }
        && (words[at].Text, words[at + 2].Text) is ("open", "close") or ("opens", "closes") or ("opens", "shuts")
            or ("open", "shut") or ("opening", "closing");

    private static int LengthOfNot(ImmutableArray<Word> words, int at)
    {
        var word = words[at].Text;
        var next = at + 1 < words.Length && !words[at + 1].StartsClause ? words[at + 1].Text : "";
        return word switch
        {
            "no" when next is "longer" or "more" => 2,
            _ when IsInstead(words, at) => 2,
            "nothing" when next.Length > 0 && States.Ill.Contains(Stemmer.StemAll([next])[0]) => 1,
            "not" or "no" => 1,
            _ when Stops.Contains(word) && next.Length > 4 && next.EndsWith("ing", StringComparison.Ordinal) => 1,
            _ when Fails.Contains(word) && next == "to" => 2,
            _ => 0,
        };
    }
}
