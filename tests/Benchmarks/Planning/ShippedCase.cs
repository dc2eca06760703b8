using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Benchmarks.Planning;

/// <summary>A case at its beginning: one symptom, one series.</summary>
/// <param name="Applicable">The faults a unit of the series can have.</param>
internal sealed record ShippedCase(
    string Name, FaultGraph Graph, SymptomId Symptom, Situation Situation, ImmutableHashSet<FaultId> Applicable)
{
    /// <summary>What is to be planned after some evidence, where the unit then stands.</summary>
    public SequencingProblem? After(IEnumerable<Evidence> evidence, AccessId standing) => CaseProblem.From(
        Graph, Believe(evidence), Situation with { Access = standing }).Problem;

    public Belief Believe(IEnumerable<Evidence> evidence) =>
        Graph.Believe([new Evidence.SymptomReported(Symptom), .. evidence], Applicable);
}
