using System.Collections.Immutable;
using DxAssistant.Knowledge.Search;

namespace DxAssistant.Server.Commands.Scoring;

/// <summary>Of the answers that were this sure, how many were right.</summary>
internal static class Reliability
{
    private static readonly ImmutableArray<double> Bounds = [0, 0.2, 0.4, 0.6, 0.8, 0.9, 0.97, 1];

    /// <summary>The answers that name a fault, by how sure they are; from the least sure.</summary>
    public static IEnumerable<(double From, double To, int Count, int Right)> Table(ImmutableArray<MatchLine> lines)
    {
        for (int i = 0; i + 1 < Bounds.Length; i++)
        {
            var (from, to, last) = (Bounds[i], Bounds[i + 1], i + 2 == Bounds.Length);
            ImmutableArray<MatchLine> inside = [.. lines.Where(line => !line.Faults.IsEmpty
                && line.Sureness >= from && (last || line.Sureness < to))];
            yield return (from, to, inside.Length, inside.Count(line => line.First == line.Expected));
        }
    }

    /// <summary>The answers given as certain.</summary>
    public static (int Count, int Right) Certain(ImmutableArray<MatchLine> lines)
    {
        ImmutableArray<MatchLine> certain = [.. lines.Where(line => line.Answer.Decision == MatchDecision.Fault)];
        return (certain.Length, certain.Count(line => line.First == line.Expected));
    }
}
