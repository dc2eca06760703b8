using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>The fault graph of the last library: where only some of its parts are others, it is edited instead of made
/// anew.</summary>
internal sealed class KeptGraph
{
    private GraphNodes? last;
    private FaultGraph? graph;

    public FaultGraph Of(GraphNodes nodes)
    {
        graph = graph is not null && last is not null && Edit(last, nodes) is { } edit
            ? graph.With(edit)
            : FaultGraph.Build(nodes.Faults.Values, nodes.Symptoms.Values, nodes.Checks.Values, nodes.Repairs.Values,
                nodes.Access);
        last = nodes;
        return graph;
    }

    // Null when parts went, or the access states are others.
    private static GraphEdit? Edit(GraphNodes before, GraphNodes now) =>
        ReferenceEquals(before.Access, now.Access)
        && Edited(before.Faults, now.Faults) is { } faults && Edited(before.Symptoms, now.Symptoms) is { } symptoms
        && Edited(before.Checks, now.Checks) is { } checks && Edited(before.Repairs, now.Repairs) is { } repairs
            ? new GraphEdit
            {
                Faults = [.. faults], Symptoms = [.. symptoms], Checks = [.. checks], Repairs = [.. repairs],
            }
            : null;

    private static List<T>? Edited<TId, T>(ImmutableSortedDictionary<TId, T> before,
        ImmutableSortedDictionary<TId, T> now)
        where TId : notnull where T : class
    {
        if (ReferenceEquals(before, now)) return [];
        List<T> edited = [];
        int kept = 0;
        foreach ((TId id, T part) in now)
        {
            bool isKnown = before.TryGetValue(id, out T? old);
            if (isKnown) kept++;
            if (!ReferenceEquals(old, part)) edited.Add(part);
        }

        return kept == before.Count ? edited : null;
    }
}
