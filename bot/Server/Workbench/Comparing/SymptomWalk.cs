using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures.Plans;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>A symptom of a series as conversations walk it with the person who may do most.</summary>
internal sealed class SymptomWalk
{
    // Symptoms with more positions are played: most have thousands.
    private const int MostExact = 50;

    private readonly Library library;
    private readonly SeriesPage series;
    private readonly SymptomId symptom;
    private readonly Situation situation;
    private readonly WalkPolicy policy;

    private SymptomWalk(Library library, SeriesPage series, SymptomId symptom, SequencingProblem problem, int work)
    {
        (this.library, this.series, this.symptom, Problem) = (library, series, symptom, problem);
        situation = PlanProblem.SituationOf(library, series, symptom);
        policy = new WalkPolicy(library, situation, symptom, work);
    }

    public SequencingProblem Problem { get; }

    public IPolicy Policy => policy;

    /// <returns>Null when there is no such series, or none of its faults shows the symptom.</returns>
    /// <param name="work">The planner's work for a step.</param>
    public static SymptomWalk? Of(Library library, string series, SymptomId symptom, int work) =>
        library.Series.TryGetValue(series, out SeriesPage? page)
            && PlanProblem.Of(library, page, symptom) is { } problem
            ? new SymptomWalk(library, page, symptom, problem, work)
            : null;

    /// <summary>Everything that can change its walks: two with one text have the same walks.</summary>
    public string Text => ProblemText.Of(Problem) + RuleText.Of(library, Problem, symptom);

    /// <summary>Its figures, with walks only where they are exact.</summary>
    public SymptomFigures? Assess()
    {
        FaultGraph all = library.Graph;
        FaultGraph one = FaultGraph.Build(all.Faults, all.Symptoms.Where(each => each.Id == symptom), all.Checks,
            all.Repairs, all.Access);
        var assessment = new Assessment(one, situation, policy) { MostPositions = MostExact };
        return assessment.Assess(0, 0, PlanProblem.FaultsOf(library, series)).Symptoms.FirstOrDefault();
    }

    /// <summary>The likeliest walk to a fault; empty when it is none of the problem's.</summary>
    public ImmutableArray<string> To(FaultId fault) =>
        Problem.Faults.Any(known => known.Id == fault) ? LikeliestWalk.Of(Problem, fault, policy) : [];
}
