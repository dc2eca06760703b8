using System.Text.Json.Nodes;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Server.Workbench.Comparing;

namespace DxAssistant.Server.Workbench.Preview;

/// <summary>Belief and plan at each point of a walk, for the person who may do most.</summary>
internal sealed class WalkPreview
{
    /// <summary>Answers of one walk, at most.</summary>
    public const int MostAnswers = 60;

    private readonly Library library;
    private readonly SequencingProblem problem;

    private WalkPreview(Library library, SequencingProblem problem) => (this.library, this.problem) = (library, problem);

    /// <summary>The walk as it stands; an answer that does not fit is told and passed over.</summary>
    /// <exception cref="ArgumentException">The series is not there, does not show the symptom, or there are too many answers.</exception>
    public static JsonObject Of(Library library, WalkAsked asked)
    {
        if (asked.Series is null || !library.Series.TryGetValue(asked.Series, out SeriesPage? series)) throw new ArgumentException($"There is no series {asked.Series}.");
        if (asked.Seen?.Length > MostAnswers) throw new ArgumentException($"A walk takes at most {MostAnswers} answers.");
        SequencingProblem problem = (asked.Symptom is null ? null : new SeriesGraph(library, series).ProblemOf(new SymptomId(asked.Symptom)))
            ?? throw new ArgumentException($"No fault of {series.Title.Text} shows that symptom.");
        return new WalkPreview(library, problem).Play(asked.Seen ?? []);
    }

    private JsonObject Play(AnswerGiven?[] given)
    {
        Position here = problem.Begin();
        Plan plan = new LivePlanner().Plan(problem, here);
        JsonObject begin = Point(here, plan);
        var steps = new JsonArray();
        foreach (AnswerGiven? answer in given)
        {
            JsonObject step = Told(answer);
            try
            {
                Position next = After(here, answer, step);
                plan = new LivePlanner().Plan(problem, next);
                here = next;
                step["after"] = Point(here, plan);
            }
            catch (ArgumentException error)
            {
                step["unfit"] = error.Message.Split(" (Parameter")[0];
            }

            steps.Add(step);
        }

        JsonObject walk = Point(here, plan);
        walk["begin"] = begin;
        walk["steps"] = steps;
        walk["options"] = new JsonArray([.. plan.Options.Select(option => (JsonNode)Option(here, option))]);
        return walk;
    }

    private JsonObject Point(Position here, Plan plan) => new()
    {
        ["access"] = library.Access[here.Access].Title.Text,
        ["minutes"] = plan.Minutes,
        ["leastMinutes"] = plan.LowerBound,
        ["exact"] = plan.IsExact,
        ["belief"] = new JsonArray([.. problem.Faults.Select(fault => (fault.Id, P: here.ProbabilityOf(fault.Id)))
            .Where(fault => fault.P > 0).OrderByDescending(fault => fault.P).ThenBy(fault => fault.Id)
            .Select(fault => (JsonNode)new JsonObject { ["id"] = fault.Id.Value, ["title"] = library.Faults[fault.Id].Title.Text, ["probability"] = fault.P })]),
    };

    private JsonObject Told(AnswerGiven? given)
    {
        var told = new JsonObject { ["check"] = given?.Check, ["outcome"] = given?.Outcome, ["repair"] = given?.Repair };
        CheckPage? check = given?.Check is { } id ? library.Checks.Values.FirstOrDefault(page => page.Id.Value == id) : null;
        RepairPage? repair = given?.Repair is { } mend ? library.Repairs.Values.FirstOrDefault(page => page.Id.Value == mend) : null;
        told["title"] = check?.Title.Text ?? repair?.Title.Text ?? given?.Check ?? given?.Repair ?? "";
        told["answer"] = given?.Repair is not null ? "did not help"
            : check?.Outcomes.FirstOrDefault(outcome => outcome.Id.Value == given?.Outcome)?.Answer.Text ?? given?.Outcome ?? "";
        return told;
    }

    private Position After(Position here, AnswerGiven? given, JsonObject step)
    {
        if (given?.Repair is { } mend)
        {
            Repair repair = problem.Repairs.FirstOrDefault(each => each.Id.Value == mend) ?? throw new ArgumentException("This repair cannot be done here.");
            return here.Failed(repair.Id, repair.Access[0]);
        }

        Check check = problem.Checks.FirstOrDefault(each => each.Id.Value == given?.Check) ?? throw new ArgumentException("This check cannot be done here.");
        var outcome = new OutcomeId(check.Outcomes.FirstOrDefault(each => each.Value == given?.Outcome).Value ?? throw new ArgumentException("The check has no such answer."));
        step["chance"] = here.Foresee(check.Id, check.Access[0]).FirstOrDefault(seen => seen.Outcome == outcome)?.Probability;
        return here.Saw(check.Id, outcome, check.Access[0]);
    }

    private JsonObject Option(Position here, PlanOption option)
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
