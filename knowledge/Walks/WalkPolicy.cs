using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Walks;

/// <summary>What a conversation does at each position of a problem, for playing and drawing walks.</summary>
/// <remarks>
/// As a conversation, it plans anew at each position with the faults and checks that are left, so that the same work
/// reaches farther the less is left.
/// </remarks>
/// <param name="situation">Of the problem.</param>
/// <param name="symptom">Whose page may name states in which work begins.</param>
/// <param name="work">The planner's work for a step.</param>
public sealed class WalkPolicy(Library library, Situation situation, SymptomId symptom,
    int work = LivePlanner.UsualWork) : IRuledPolicy
{
    private readonly WalkChooser chooser = new(library, work);
    private readonly ImmutableHashSet<AccessId> first = SafeStateFirst.StatesOf(library, [symptom]);

    /// <summary>The step with the plan it came from; null when no fault is left in question.</summary>
    public LaidStep? Walk(SequencingProblem problem, Position here) => chooser.Choose(SpotAt(problem, here));

    public RuledStep Choose(SequencingProblem problem, Position position) => Walk(problem, position) is { } walk
        ? new RuledStep(walk.Step,
            [.. walk.Moves.Select(move => new RuleLoss(RuleShapes.NameOf(move.Rule), move.Minutes))])
        {
            HeldBack = [.. walk.HeldBack.Select(RuleShapes.NameOf)],
        }
        : new RuledStep(new PlannedStep.Nothing(), []);

    public PlannedStep Next(SequencingProblem problem, Position position) => Choose(problem, position).Step;

    /// <summary>The same without the rules.</summary>
    public IPolicy Plain => new PlainPolicy(this);

    private WalkSpot SpotAt(SequencingProblem problem, Position here) => WalkSpot.At(
        library.Graph, problem, here, situation,
        SafeStateFirst.StillDemanded(library, first, problem.Checks.Select(check => check.Id).Where(here.IsUsed)));

    private sealed class PlainPolicy(WalkPolicy ruled) : IPolicy
    {
        public PlannedStep Next(SequencingProblem problem, Position position) =>
            ruled.chooser.Plain(ruled.SpotAt(problem, position)) ?? new PlannedStep.Nothing();
    }
}
