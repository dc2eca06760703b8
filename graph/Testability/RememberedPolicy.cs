using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Search;

namespace DxAssistant.Graph.Testability;

/// <summary>
/// A policy that is asked about each position once, because sessions meet the same positions again and again.
/// </summary>
internal sealed class RememberedPolicy(SequencingProblem problem, IPolicy policy) : IPolicy
{
    private readonly PositionIndex index = new(problem);
    private readonly List<PlannedStep> steps = [];

    public PlannedStep Next(SequencingProblem asked, Position position)
    {
        if (index.Add(position, out int known)) steps.Add(policy.Next(asked, position));
        return steps[known];
    }
}
