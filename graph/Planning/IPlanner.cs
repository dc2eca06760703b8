namespace DxAssistant.Graph.Planning;

/// <summary>A policy that gives its reasons.</summary>
public interface IPlanner : IPolicy
{
    /// <summary>The next step from a position, what it is worth, and what else could be done.</summary>
    Plan Plan(SequencingProblem problem, Position position);
}
