using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>A symptom of a series as a technician who may do everything has to solve it.</summary>
public static class PlanProblem
{
    /// <summary>The problem; null when no fault of the series shows the symptom.</summary>
    public static SequencingProblem? Of(Library library, SeriesPage series, SymptomId symptom)
    {
        bool Elsewhere(ImmutableSortedSet<string> only) => !only.IsEmpty && !only.Contains(series.Id);
        ImmutableSortedSet<FaultId> here = [.. library.Faults.Values.Where(fault => !Elsewhere(fault.Series)).Select(fault => fault.Id)];
        if (library.Graph.Find(symptom) is not { } shown || !shown.Causes.Keys.Any(fault => fault != FaultId.NoneOfThese && here.Contains(fault)))
            return null;
        var situation = new Situation(library.Roles.MaxBy(page => page.Role.Rank)!.Role, library.Graph.Access.Start)
        {
            BarredChecks = [.. library.Checks.Values.Where(check => check.OwnersOnly || Elsewhere(check.Series)).Select(check => check.Id)],
            HandOverMinutes = library.HandOverMinutes,
        };
        return CaseProblem.From(library.Graph, library.Graph.Believe([new Graph.Evidence.SymptomReported(symptom)], here), situation).Problem;
    }
}
