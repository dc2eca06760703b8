using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures.Plans;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Bot.Tests.Conversation.Walks;

/// <summary>The steps of a walk whose answers are drawn as they are likely.</summary>
internal static class RandomWalk
{
    public static ImmutableArray<LaidStep> Of(Library library, SymptomId symptom, Random random, int work, int steps)
    {
        SeriesPage series = library.Series.Values.First(page => PlanProblem.Of(library, page, symptom) is not null);
        SequencingProblem problem = PlanProblem.Of(library, series, symptom)!;
        var policy = new WalkPolicy(library, PlanProblem.SituationOf(library, series, symptom), symptom, work);
        var walk = ImmutableArray.CreateBuilder<LaidStep>();
        Position? here = problem.Begin();
        while (here is not null && walk.Count < steps && policy.Walk(problem, here) is { } step)
        {
            walk.Add(step);
            here = After(here, step.Step, random);
        }

        return walk.ToImmutable();
    }

    // null at the end of the walk.
    private static Position? After(Position here, PlannedStep step, Random random)
    {
        if (step is PlannedStep.DoRepair repair)
            return here.CanFail(repair.Repair) ? here.Failed(repair.Repair, repair.Access) : null;
        if (step is not PlannedStep.DoCheck check) return null;
        double left = random.NextDouble();
        ImmutableArray<ForeseenOutcome> seen = here.Foresee(check.Check, check.Access);
        return (seen.FirstOrDefault(outcome => (left -= outcome.Probability) < 0) ?? seen[^1]).After;
    }
}
