using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Doubt;

/// <summary>Bayes' rule, and the order of perfect checks.</summary>
public static class Evidence
{
    public static readonly Citation Bayes = Citation.Textbook("Bayes' rule");
    public static readonly Citation Smith = new("Smith, Naval Research Logistics Quarterly 3 (1956)",
        "weighted shortest processing time", CitationStanding.FromMemory);

    /// <summary>Prior times likelihood, scaled to 1; null when nothing is left.</summary>
    public static ImmutableArray<double>? Posterior(ImmutableArray<double> prior, ImmutableArray<double> likelihood)
    {
        var joint = prior.Zip(likelihood, (p, l) => p * l).ToImmutableArray();
        var sum = joint.Sum();
        return sum > 0 && double.IsFinite(sum) ? [.. joint.Select(value => value / sum)] : null;
    }

    /// <summary>Order of checks with the least expected cost: falling probability over cost, ties in the order
    /// given.</summary>
    /// <param name="cost">Each above 0.</param>
    /// <returns>Positions in the lists, first check first, and the expected cost.</returns>
    /// <remarks>Exactly one fault, perfect checks, stop when found. Source: Smith 1956.</remarks>
    public static (ImmutableArray<int> Order, double ExpectedCost) Sequence(
        ImmutableArray<double> probability, ImmutableArray<double> cost)
    {
        var order = Enumerable.Range(0, cost.Length)
            .OrderByDescending(i => NumberText.Round(probability[i] / cost[i])).ThenBy(i => i).ToImmutableArray();
        var (spent, expected) = (0.0, 0.0);
        foreach (var i in order)
        {
            spent += cost[i];
            expected += probability[i] * spent;
        }
        return (order, expected);
    }
}
