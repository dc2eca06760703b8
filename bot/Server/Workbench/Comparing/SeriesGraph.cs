using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures.Plans;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>One series of a library as the planner sees it, for the person who may do most.</summary>
internal sealed class SeriesGraph(Library library, SeriesPage series)
{
    public SeriesPage Series => series;

    public ImmutableSortedSet<FaultId> Applicable { get; } = PlanProblem.FaultsOf(library, series);

    /// <summary>The problem a symptom poses; null when no fault of the series shows it.</summary>
    public SequencingProblem? ProblemOf(SymptomId symptom) => PlanProblem.Of(library, series, symptom);

    /// <summary>The figures of one symptom.</summary>
    /// <param name="work">The planner's work for a step.</param>
    public SymptomFigures? Assess(SymptomId symptom, int walks, ulong seed, int work)
    {
        FaultGraph all = library.Graph;
        FaultGraph one = FaultGraph.Build(all.Faults, all.Symptoms.Where(each => each.Id == symptom), all.Checks, all.Repairs, all.Access);
        var assessment = new Assessment(one, PlanProblem.SituationOf(library, series, symptom), new LivePlanner(work)) { MostPositions = Math.Min(walks, 50) };
        return assessment.Assess(walks, seed, Applicable).Symptoms.FirstOrDefault();
    }
}
