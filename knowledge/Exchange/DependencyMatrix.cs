using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>
/// Faults against what they show: the D-matrix (IEEE 1232 and 1522, from memory), with probabilities.
/// </summary>
public sealed record DependencyMatrix(
    ImmutableArray<MatrixFault> Faults, ImmutableArray<MatrixSymptom> Symptoms, ImmutableArray<MatrixCheck> Checks)
{
    public static DependencyMatrix Of(FaultGraph graph) => new(
        [
            .. graph.Faults.Select(fault => new MatrixFault(
                fault.Id.Value, fault.Weight,
                [.. graph.RepairsOf(fault.Id).Select(repair => repair.Id.Value).Order(StringComparer.Ordinal)])),
        ],
        [.. graph.Symptoms.Select(symptom =>
            new MatrixSymptom(symptom.Id.Value, symptom.Causes.ToImmutableSortedDictionary(
                cause => cause.Key.Value, cause => cause.Value, StringComparer.Ordinal)))],
        [.. graph.Checks.Select(check => Of(check, graph))]);

    private static MatrixCheck Of(Check check, FaultGraph graph) => new(
        check.Id.Value, [.. check.Outcomes.Select(outcome => outcome.Value)],
        graph.Faults.ToImmutableSortedDictionary(
            fault => fault.Id.Value, fault => check.Row(fault.Id), StringComparer.Ordinal));
}
