using System.Text.Json.Nodes;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures.Plans;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Server.Workbench.Preview;

/// <summary>Belief and plan at each point of a walk, for the person who may do most.</summary>
internal sealed class WalkPreview
{
    /// <summary>Answers of one walk, at most.</summary>
    public const int MostAnswers = 60;

    private readonly Library library;
    private readonly SequencingProblem problem;
    private readonly WalkPolicy policy;

    private WalkPreview(Library library, SequencingProblem problem, WalkPolicy policy) =>
        (this.library, this.problem, this.policy) = (library, problem, policy);

    /// <summary>The walk as it stands.</summary>
    /// <exception cref="ArgumentException">
    /// The series is not there, does not show the symptom, there are too many answers, or one does
    /// not fit and is not to be passed over.
    /// </exception>
    public static JsonObject Of(Library library, WalkAsked asked)
    {
        if (asked.Series is null || !library.Series.TryGetValue(asked.Series, out SeriesPage? series))
            throw new ArgumentException($"There is no series {asked.Series}.");
        if (asked.Seen?.Length > MostAnswers)
            throw new ArgumentException($"A walk takes at most {MostAnswers} answers.");
        SequencingProblem problem =
            (asked.Symptom is null ? null : PlanProblem.Of(library, series, new SymptomId(asked.Symptom)))
            ?? throw new ArgumentException($"No fault of {series.Title.Text} shows that symptom.");
        var symptom = new SymptomId(asked.Symptom!);
        var policy = new WalkPolicy(library, PlanProblem.SituationOf(library, series, symptom), symptom);
        return new WalkPreview(library, problem, policy).Play(asked.Seen ?? [], asked.PassOver);
    }

    private JsonObject Play(AnswerGiven?[] given, bool passOver)
    {
        Position here = problem.Begin();
        LaidStep? laid = policy.Walk(problem, here);
        JsonObject begin = Point(here, laid);
        var steps = new JsonArray();
        foreach (AnswerGiven? answer in given)
        {
            JsonObject step = Told(answer);
            steps.Add(step);
            try
            {
                Position next = After(here, answer, step);
                LaidStep? from = policy.Walk(problem, next);
                (here, laid) = (next, from);
                step["after"] = Point(here, laid);
            }
            catch (ArgumentException error) when (passOver)
            {
                step["unfit"] = Sentence(error);
            }
            catch (ArgumentException error)
            {
                throw new ArgumentException($"Answer {steps.Count} does not fit. {Sentence(error)}", error);
            }
        }

        JsonObject walk = Point(here, laid);
        walk["begin"] = begin;
        walk["steps"] = steps;
        walk["next"] = laid is null ? null : Next(here, laid);
        walk["options"] = new JsonArray(
            [.. laid is null ? [] : laid.Plan.Options.Select(option => (JsonNode)Option(here, option.Step, option))]);
        return walk;
    }

    private static string Sentence(ArgumentException error) => error.Message.Split(" (Parameter")[0];

    // What a conversation asks there: the plan's step, or what the rules over the plan put in its place.
    private JsonObject Next(Position here, LaidStep laid)
    {
        JsonObject next = Option(here, laid.Step, laid.Option);
        next["rules"] = new JsonArray([.. laid.Moves.Select(move => (JsonNode)new JsonObject
        {
            ["rule"] = RuleShapes.NameOf(move.Rule), ["instead"] = TitleOf(move.From), ["minutes"] = move.Minutes,
        })]);
        return next;
    }

    private JsonObject Point(Position here, LaidStep? laid) => new()
    {
        ["access"] = library.Access[here.Access].Title.Text,
        ["minutes"] = laid?.Plan.Minutes ?? 0,
        ["leastMinutes"] = laid?.Plan.LowerBound ?? 0,
        ["exact"] = laid?.Plan.IsExact ?? true,
        ["belief"] = new JsonArray([.. problem.Faults.Select(fault => (fault.Id, P: here.ProbabilityOf(fault.Id)))
            .Where(fault => fault.P > 0).OrderByDescending(fault => fault.P).ThenBy(fault => fault.Id)
            .Select(fault => (JsonNode)new JsonObject
            {
                ["id"] = fault.Id.Value, ["title"] = library.Faults[fault.Id].Title.Text, ["probability"] = fault.P,
            })]),
    };

    private JsonObject Told(AnswerGiven? given)
    {
        var told = new JsonObject
        {
            ["check"] = given?.Check, ["outcome"] = given?.Outcome, ["repair"] = given?.Repair,
        };
        CheckPage? check = given?.Check is { } id
            ? library.Checks.Values.FirstOrDefault(page => page.Id.Value == id)
            : null;
        RepairPage? repair = given?.Repair is { } mend
            ? library.Repairs.Values.FirstOrDefault(page => page.Id.Value == mend)
            : null;
        told["title"] = check?.Title.Text ?? repair?.Title.Text ?? given?.Check ?? given?.Repair ?? "";
        told["answer"] = given?.Repair is not null ? "did not help"
            : check?.Outcomes.FirstOrDefault(outcome => outcome.Id.Value == given?.Outcome)?.Answer.Text
                ?? given?.Outcome ?? "";
        return told;
    }

    private Position After(Position here, AnswerGiven? given, JsonObject step)
    {
        if (given?.Repair is { } mend)
        {
            Repair repair = problem.Repairs.FirstOrDefault(each => each.Id.Value == mend)
                ?? throw new ArgumentException($"The repair {mend} cannot be done here.");
            return here.Failed(repair.Id, repair.Access[0]);
        }

        if (given?.Check is not { } asked)
            throw new ArgumentException("An answer names a check with its outcome, or a repair that did not help.");
        Check check = problem.Checks.FirstOrDefault(each => each.Id.Value == asked)
            ?? throw new ArgumentException($"The check {asked} cannot be done here.");
        OutcomeId outcome = check.Outcomes.Where(each => each.Value == given.Outcome).Select(each => (OutcomeId?)each)
            .FirstOrDefault()
            ?? throw new ArgumentException(
                $"The check {asked} has no answer {given.Outcome}: it has {string.Join(", ", check.Outcomes)}.");
        step["chance"] = here.Foresee(check.Id, check.Access[0])
            .FirstOrDefault(seen => seen.Outcome == outcome)?.Probability;
        return here.Saw(check.Id, outcome, check.Access[0]);
    }

    /// <param name="option">The figures of the step; null when the plan did not weigh it.</param>
    private JsonObject Option(Position here, PlannedStep taken, PlanOption? option)
    {
        var shown = new JsonObject
        {
            ["title"] = TitleOf(taken), ["price"] = option?.Price, ["minutes"] = option?.Minutes,
            ["leastMinutes"] = option?.LowerBound,
        };
        switch (taken)
        {
            case PlannedStep.DoCheck step:
                CheckPage check = library.Checks[step.Check];
                (shown["check"], shown["ask"]) = (step.Check.Value, check.Ask.Text);
                shown["access"] = library.Access[step.Access].Title.Text;
                shown["outcomes"] =
                    new JsonArray([.. here.Foresee(step.Check, step.Access).Select(seen => (JsonNode)new JsonObject
                    {
                        ["id"] = seen.Outcome.Value,
                        ["answer"] = check.Outcomes.First(outcome => outcome.Id == seen.Outcome).Answer.Text,
                        ["probability"] = seen.Probability,
                    })]);
                break;
            case PlannedStep.DoRepair step:
                shown["repair"] = step.Repair.Value;
                break;
        }

        return shown;
    }

    private string TitleOf(PlannedStep step) => step switch
    {
        PlannedStep.DoCheck check => library.Checks[check.Check].Title.Text,
        PlannedStep.DoRepair repair when library.Repairs.TryGetValue(repair.Repair, out RepairPage? page) =>
            page.Title.Text,
        _ => "Leave it to somebody else",
    };
}
