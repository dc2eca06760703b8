using System.Text.Json.Nodes;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Server.Workbench.Comparing;

namespace DxAssistant.Server.Workbench.Preview;

/// <summary>Belief and plan at a point of a walk, for the person who may do most.</summary>
internal static class WalkPreview
{
    /// <exception cref="ArgumentException">Something named is not there, or cannot be seen at that point.</exception>
    public static JsonObject Of(Library library, WalkAsked asked)
    {
        if (!library.Series.TryGetValue(asked.Series, out SeriesPage? series)) throw new ArgumentException($"there is no series {asked.Series}");
        SequencingProblem problem = new SeriesGraph(library, series).ProblemOf(new SymptomId(asked.Symptom))
            ?? throw new ArgumentException($"{asked.Series} has no fault that shows {asked.Symptom}");
        Position here = Start(problem, asked);
        Plan plan = new LivePlanner().Plan(problem, here);
        return new JsonObject
        {
            ["belief"] = new JsonArray([.. problem.Faults.Select(fault => (fault.Id, P: here.ProbabilityOf(fault.Id)))
                .Where(fault => fault.P > 0).OrderByDescending(fault => fault.P).ThenBy(fault => fault.Id)
                .Select(fault => (JsonNode)new JsonObject { ["id"] = fault.Id.Value, ["title"] = library.Faults[fault.Id].Title.Text, ["probability"] = fault.P })]),
            ["access"] = library.Access[here.Access].Title.Text,
            ["minutes"] = plan.Minutes,
            ["leastMinutes"] = plan.LowerBound,
            ["exact"] = plan.IsExact,
            ["options"] = new JsonArray([.. plan.Options.Select(option => (JsonNode)Option(library, here, option))]),
        };
    }

    private static Position Start(SequencingProblem problem, WalkAsked asked)
    {
        Position here = problem.Begin();
        foreach (AnswerGiven seen in asked.Seen ?? [])
        {
            Check check = problem.Checks.FirstOrDefault(each => each.Id.Value == seen.Check) ?? throw new ArgumentException($"no check {seen.Check} can be done here");
            here = here.Saw(check.Id, new OutcomeId(seen.Outcome), check.Access[0]);
        }

        foreach (string failed in asked.Failed ?? [])
        {
            Repair repair = problem.Repairs.FirstOrDefault(each => each.Id.Value == failed) ?? throw new ArgumentException($"no repair {failed} can be done here");
            here = here.Failed(repair.Id, repair.Access[0]);
        }

        return here;
    }

    private static JsonObject Option(Library library, Position here, PlanOption option)
    {
        var shown = new JsonObject { ["price"] = option.Price, ["minutes"] = option.Minutes, ["leastMinutes"] = option.LowerBound };
        switch (option.Step)
        {
            case PlannedStep.DoCheck step:
                CheckPage check = library.Checks[step.Check];
                (shown["check"], shown["title"], shown["ask"]) = (step.Check.Value, check.Title.Text, check.Ask.Text);
                shown["access"] = library.Access[step.Access].Title.Text;
                shown["outcomes"] = new JsonArray([.. here.Foresee(step.Check, step.Access).Select(seen => (JsonNode)new JsonObject
                {
                    ["id"] = seen.Outcome.Value,
                    ["answer"] = check.Outcomes.First(outcome => outcome.Id == seen.Outcome).Answer.Text,
                    ["probability"] = seen.Probability,
                })]);
                break;
            case PlannedStep.DoRepair step:
                shown["repair"] = step.Repair.Value;
                shown["title"] = library.Repairs.TryGetValue(step.Repair, out RepairPage? repair) ? repair.Title.Text : "Leave it to somebody else";
                break;
        }

        return shown;
    }
}
