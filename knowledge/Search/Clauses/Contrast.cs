using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>
/// Where a message turns from what it is not to what it is: "all heads in one mode, but the study ices".
/// </summary>
internal static class Contrast
{
    private const int LeastBefore = 2;
    private const int LeastAfter = 2;
    private static readonly string[] Turns = ["but", "just", "simply", "however", "yet", "instead", "only", "nothing"];

    /// <summary>The words after the last turn; empty when the message does not turn.</summary>
    public static ImmutableArray<Word> After(ImmutableArray<Word> words)
    {
        for (var at = words.Length - LeastAfter - 1; at >= LeastBefore; at--)
        {
            if (Turns.Contains(words[at].Text))
                return words[(at + 1)..];
        }
        return [];
    }
}
