using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Simulating;

/// <summary>The units to play: each fault as often as it causes the symptom on that series.</summary>
/// <remarks>What other series show by a code and this one does not is left out: the unit cannot report it.</remarks>
internal static class SimulatedCases
{
    public static ImmutableArray<SimulatedCase> Draw(Library library, SimulationOrder order)
    {
        var draws = new Draws(order.Seed);
        var causes = new CauseDraws(library);
        var plays = new PlayDraws(library, order, causes);
        var cases = ImmutableArray.CreateBuilder<SimulatedCase>();
        foreach (string series in library.Series.Keys.Where(id => order.Series is null or "" || id == order.Series))
            foreach (Symptom symptom in library.Graph.Symptoms.Where(node => order.Symptom is null
                || node.Id.Value == order.Symptom)
                .Where(node => CanShow(library, series, node.Id)))
                foreach (string role in library.Roles.Select(page => page.Role.Id)
                    .Where(id => order.Role is null || id == order.Role))
                    for (int walk = 0; walk < order.Walks; walk++)
                        if (causes.Draw(symptom, series, draws) is { } fault)
                            cases.Add(plays.Play(new SimulatedCase(symptom.Id.Value, series, role, fault, draws.Next()),
                                draws));
        return cases.ToImmutable();
    }

    /// <summary>Whether a unit of the series can report it: a code only where its page lists it.</summary>
    public static bool CanShow(Library library, string series, SymptomId symptom) =>
        library.Series[series].Codes.Any(code => code.Symptom == symptom)
        || !library.Series.Values.Any(page => page.Codes.Any(code => code.Symptom == symptom));
}
