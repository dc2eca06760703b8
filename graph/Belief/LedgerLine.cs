using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>What one piece of evidence did.</summary>
/// <param name="Expected">
/// How likely the evidence was under the belief before it, 0 to 1, as far as a likelihood tells; the lower, the more
/// surprising.
/// </param>
/// <param name="LogLikelihood">
/// Natural logarithm of P(evidence | fault) for each candidate; negative infinity when the fault cannot show this
/// evidence. The difference between two faults is how far the evidence moved the odds between them.
/// </param>
/// <param name="Before">How likely each candidate was before this evidence; sums to 1 unless all were excluded.</param>
public sealed record LedgerLine(
    Evidence Evidence,
    double Expected,
    ImmutableSortedDictionary<FaultId, double> LogLikelihood,
    ImmutableSortedDictionary<FaultId, double> Before)
{
    /// <summary>
    /// The weight of evidence for a fault: how far the logarithm of its odds against all the others moved. Over a
    /// ledger the weights add up to the whole change of the odds. Positive infinity when every other fault was
    /// excluded, negative infinity when this one was; 0 where the evidence says nothing or no other fault was left.
    /// </summary>
    /// <remarks>
    /// Source: I. J. Good, Probability and the Weighing of Evidence, 1950 (from memory). Logarithms and exponentials
    /// may differ in their last bits between systems. No belief and no step rests on them: the ranking multiplies
    /// likelihoods and is rounded before it is sorted. Whoever shows or compares a weight rounds it first.
    /// </remarks>
    /// <exception cref="KeyNotFoundException">The fault is no candidate.</exception>
    public double WeightFor(FaultId fault)
    {
        double likelihood = 0, weight = 0;
        foreach ((FaultId other, double share) in Before)
            if (other != fault)
                (likelihood, weight) = (likelihood + share * Math.Exp(LogLikelihood[other]), weight + share);
        double own = LogLikelihood[fault];
        if (!(weight > 0) || (likelihood == 0 && double.IsNegativeInfinity(own))) return 0;
        return own - Math.Log(likelihood / weight);
    }
}
