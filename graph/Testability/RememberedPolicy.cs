using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Search;

namespace DxAssistant.Graph.Testability;

/// <summary>
/// A policy that is asked about each position once, because sessions meet the same positions again and again.
/// </summary>
internal sealed class RememberedPolicy(SequencingProblem problem, IPolicy policy) : IRuledPolicy
{
    private readonly PositionIndex index = new(problem);
    private readonly List<RuledStep> steps = [];

    public RuledStep Choose(SequencingProblem asked, Position position)
    {
        if (index.Add(position, out int known)) steps.Add(Ask(asked, position));
        return steps[known];
    }

    public PlannedStep Next(SequencingProblem asked, Position position) => Choose(asked, position).Step;

    private RuledStep Ask(SequencingProblem asked, Position position) =>
        policy is IRuledPolicy ruled ? ruled.Choose(asked, position) : new RuledStep(policy.Next(asked, position), []);
}
