using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Cases.Figures;

/// <summary>Weighs the frequency words of the pages against closed cases. Pure.</summary>
/// <remarks>
/// The words are a Dirichlet prior over the faults that counts as a number of cases; the counts of closed cases are
/// multinomial, so the posterior mean of a fault's share is (weight × prior share + seen) / (weight + all seen).
/// Source, from memory: Gelman et al., Bayesian Data Analysis, 3rd edition, 3.4 (multinomial model).
/// </remarks>
public static class FrequencyReport
{
    /// <summary>How many cases the words of the pages count as, unless told otherwise.</summary>
    public const double UsualWeight = 500;

    // With fewer cases, seen or foretold, chance alone moves the rarest words. Common practice, no source.
    private const int LeastCases = 5;

    /// <param name="seen">By fault, the closed cases in which it was the fault; faults that the pages no longer have
    /// are left out.</param>
    /// <param name="weight">How many cases the words count as; above 0.</param>
    /// <returns>One line a fault, ordered by id.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="weight"/> is not above 0.</exception>
    public static ImmutableArray<FrequencyProposal> Of(
        Library library, IReadOnlyDictionary<string, int> seen, double weight = UsualWeight)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(weight);
        var faults = library.Graph.Faults.OrderBy(fault => fault.Id).ToImmutableArray();
        double sum = faults.Sum(fault => fault.Weight);
        int all = faults.Sum(fault => seen.GetValueOrDefault(fault.Id.Value));
        return [.. faults.Select(
            fault => Weigh(library, fault, seen.GetValueOrDefault(fault.Id.Value), sum, all, weight))];
    }

    private static FrequencyProposal Weigh(Library library, Fault fault, int seen, double sum, int all, double weight)
    {
        double prior = fault.Weight / sum;
        double share = (weight * prior + seen) / (weight + all);
        string word = Nearest(library, fault.Weight);
        string proposed = Math.Max(seen, all * prior) < LeastCases ? word : Nearest(library, share * sum);
        return new FrequencyProposal(fault.Id.Value, word, seen, Math.Round(all * prior, 2), Math.Round(share, 5),
            proposed);
    }

    // By ratio: from rare to occasional is as far as from occasional to regular.
    private static string Nearest(Library library, double value) => library.FrequencyWords
        .OrderBy(word => Math.Round(Math.Abs(Math.Log(word.Value / value)), 9))
        .ThenBy(word => word.Key, StringComparer.Ordinal)
        .First().Key;
}
