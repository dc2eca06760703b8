using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>Parts of a graph that are others now, or new.</summary>
public sealed record GraphEdit
{
    public ImmutableArray<Fault> Faults { get; init; } = [];
    public ImmutableArray<Symptom> Symptoms { get; init; } = [];
    public ImmutableArray<Check> Checks { get; init; } = [];
    public ImmutableArray<Repair> Repairs { get; init; } = [];
}
