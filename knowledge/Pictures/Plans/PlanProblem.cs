using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>A symptom of a series as a technician who may do everything has to solve it.</summary>
public static class PlanProblem
{
    /// <summary>The problem; null when no fault of the series shows the symptom.</summary>
    public static SequencingProblem? Of(Library library, SeriesPage series, SymptomId symptom) =>
        Of(library, series, symptom, MayDoMost(library));

    /// <summary>The problem as somebody has to solve it; null when no fault of the series shows the symptom.</summary>
    public static SequencingProblem? Of(Library library, SeriesPage series, SymptomId symptom, Role who)
    {
        ImmutableSortedSet<FaultId> here = FaultsOf(library, series);
        if (library.Graph.Find(symptom) is not { } shown
            || !shown.Causes.Keys.Any(fault => fault != FaultId.NoneOfThese && here.Contains(fault)))
            return null;
        Belief belief = library.Graph.Believe([new Evidence.SymptomReported(symptom)], here);
        return CaseProblem.From(library.Graph, belief, SituationOf(library, series, symptom, who)).Problem;
    }

    /// <summary>The faults that the series can have.</summary>
    public static ImmutableSortedSet<FaultId> FaultsOf(Library library, SeriesPage series) =>
        [.. library.Faults.Values.Where(fault => !IsElsewhere(fault.Series, series)).Select(fault => fault.Id)];

    /// <summary>
    /// A technician who may do everything before the unit as it stands at the beginning, asked what a conversation asks
    /// at the symptom.
    /// </summary>
    public static Situation SituationOf(Library library, SeriesPage series, SymptomId symptom) =>
        SituationOf(library, series, symptom, MayDoMost(library));

    /// <summary>
    /// Somebody before the unit as it stands at the beginning, asked what a conversation asks at the symptom.
    /// </summary>
    public static Situation SituationOf(Library library, SeriesPage series, SymptomId symptom, Role who) =>
        new(who, library.Graph.Access.Start)
        {
            BarredChecks =
            [
                .. library.Checks.Values.Where(check => (check.OwnersOnly && who.Rank > 0)
                    || check.NotAt.Contains(symptom)
                    || (!check.OnlyAt.IsEmpty && !check.OnlyAt.Contains(symptom)) || IsElsewhere(check.Series, series))
                    .Select(check => check.Id),
            ],
            HandOverMinutes = library.HandOverMinutes,
        };

    private static Role MayDoMost(Library library) => library.Roles.MaxBy(page => page.Role.Rank)!.Role;

    private static bool IsElsewhere(ImmutableSortedSet<string> only, SeriesPage series) =>
        !only.IsEmpty && !only.Contains(series.Id);
}
