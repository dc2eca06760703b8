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
public sealed record LedgerLine(
    Evidence Evidence, double Expected, ImmutableSortedDictionary<FaultId, double> LogLikelihood);
