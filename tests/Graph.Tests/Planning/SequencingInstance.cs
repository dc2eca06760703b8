using System.Collections.Immutable;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

/// <summary>One instance of tests/Reference/sequencing.json.</summary>
public sealed record SequencingInstance(
    string Id,
    string Type,
    SequencingProblem Problem,
    double? PublishedValue,
    double ExpectedCost,
    ImmutableArray<string> TiedFirstActions,
    ImmutableSortedDictionary<string, double> FirstActionValues,
    ImmutableSortedDictionary<string, double?> Baselines);
