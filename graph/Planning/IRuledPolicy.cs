namespace DxAssistant.Graph.Planning;

/// <summary>A plan with rules laid over it.</summary>
public interface IRuledPolicy : IPolicy
{
    /// <summary>The next step, and which rules put it in the place of the plan's.</summary>
    RuledStep Choose(SequencingProblem problem, Position position);
}
