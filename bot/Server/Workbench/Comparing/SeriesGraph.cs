using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>One series of a library as the planner sees it, for the person who may do most.</summary>
internal sealed class SeriesGraph
{
    private readonly Library library;
    private readonly Situation situation;

    public SeriesGraph(Library library, SeriesPage series)
    {
        this.library = library;
        Series = series;
        bool Elsewhere(ImmutableSortedSet<string> only) => !only.IsEmpty && !only.Contains(series.Id);
        situation = new Situation(library.Roles.MaxBy(page => page.Role.Rank)!.Role, library.Graph.Access.Start)
        {
            BarredChecks = [.. library.Checks.Values.Where(check => Elsewhere(check.Series)).Select(check => check.Id)],
            HandOverMinutes = library.HandOverMinutes,
        };
        Applicable = [.. library.Faults.Values.Where(fault => !Elsewhere(fault.Series)).Select(fault => fault.Id)];
    }

    public SeriesPage Series { get; }

    public ImmutableSortedSet<FaultId> Applicable { get; }

    /// <summary>The problem a symptom poses; null when no fault of the series shows it.</summary>
    public SequencingProblem? ProblemOf(SymptomId symptom) =>
        library.Graph.Find(symptom) is not { } shown || !shown.Causes.Keys.Any(fault => fault != FaultId.NoneOfThese && Applicable.Contains(fault))
            ? null
            : CaseProblem.From(library.Graph, library.Graph.Believe([new Evidence.SymptomReported(symptom)], Applicable),
                situation with { Objective = Objective.Repair }).Problem;

    /// <summary>The figures of one symptom.</summary>
    /// <param name="work">The planner's work for a step.</param>
    public SymptomFigures? Assess(SymptomId symptom, int walks, ulong seed, int work)
    {
        FaultGraph all = library.Graph;
        FaultGraph one = FaultGraph.Build(all.Faults, all.Symptoms.Where(each => each.Id == symptom), all.Checks, all.Repairs, all.Access);
        var assessment = new Assessment(one, situation, new LivePlanner(work)) { MostPositions = Math.Min(walks, 50) };
        return assessment.Assess(walks, seed, Applicable).Symptoms.FirstOrDefault();
    }
}
