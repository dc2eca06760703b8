using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>How many times better what a check shows fits a fault than a unit without one.</summary>
public static class LikelihoodRatio
{
    /// <param name="weights">
    /// How likely each outcome is the true one, in the check's order; one for each outcome, 0 or more.
    /// </param>
    /// <returns>0 or more; infinity for what is never seen without a fault, 0 where neither shows it.</returns>
    public static double Of(Check check, FaultId fault, ImmutableArray<double> weights)
    {
        double with = Fit(check.Row(fault), weights), without = Fit(check.Row(FaultId.NoneOfThese), weights);
        return without > 0 ? with / without : with > 0 ? double.PositiveInfinity : 0;
    }

    /// <summary>The same of an answer that is plain.</summary>
    /// <param name="outcome">Its place in the check's order.</param>
    public static double Of(Check check, FaultId fault, int outcome) =>
        Of(check, fault, [.. check.Outcomes.Select((_, place) => place == outcome ? 1.0 : 0.0)]);

    private static double Fit(ImmutableArray<double> row, ImmutableArray<double> weights) =>
        row.Zip(weights, (likelihood, weight) => likelihood * weight).Sum();
}
