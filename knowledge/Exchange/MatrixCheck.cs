using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>The columns of one check.</summary>
/// <param name="Rows">P(outcome | fault) of every fault, in the order of the outcomes.</param>
public sealed record MatrixCheck(
    string Id, ImmutableArray<string> Outcomes, ImmutableSortedDictionary<string, ImmutableArray<double>> Rows);
