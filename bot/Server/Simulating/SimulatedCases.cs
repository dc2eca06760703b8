using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Simulating;

/// <summary>The units to play: each fault as often as it causes the symptom on that series.</summary>
internal static class SimulatedCases
{
    public static ImmutableArray<SimulatedCase> Draw(Library library, SimulationOrder order)
    {
        var draws = new Draws(order.Seed);
        var cases = ImmutableArray.CreateBuilder<SimulatedCase>();
        foreach (string series in library.Series.Keys.Where(id => order.Series is null or "" || id == order.Series))
            foreach (Symptom symptom in library.Graph.Symptoms.Where(node => order.Symptom is null || node.Id.Value == order.Symptom))
                foreach (string role in library.Roles.Select(page => page.Role.Id).Where(id => order.Role is null || id == order.Role))
                    for (int walk = 0; walk < order.Walks; walk++)
                        if (Fault(library, symptom, series, draws) is { } fault)
                            cases.Add(new SimulatedCase(symptom.Id.Value, series, role, fault, draws.Next()));
        return cases.ToImmutable();
    }

    // A symptom that nothing but "none of these" can cause on a series does not come up there.
    private static string? Fault(Library library, Symptom symptom, string series, Draws draws)
    {
        (FaultId Id, double Weight)[] causes = [.. symptom.Causes
            .Where(cause => library.Faults[cause.Key].Series is { IsEmpty: true } || library.Faults[cause.Key].Series.Contains(series))
            .Select(cause => (cause.Key, cause.Value * library.Graph.Find(cause.Key)!.Weight))];
        return causes.Any(cause => cause.Id != FaultId.NoneOfThese)
            ? causes[draws.NextPlace([.. causes.Select(cause => cause.Weight)])].Id.Value
            : null;
    }
}
