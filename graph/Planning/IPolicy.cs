namespace DxAssistant.Graph.Planning;

/// <summary>A rule that says what to do at each position. The same position gets the same step.</summary>
public interface IPolicy
{
    /// <summary>The next step; <see cref="PlannedStep.Nothing"/> when there is none.</summary>
    PlannedStep Next(SequencingProblem problem, Position position);
}
