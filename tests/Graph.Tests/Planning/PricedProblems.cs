using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

/// <summary>Problems with a price on parts changed for nothing.</summary>
internal static class PricedProblems
{
    /// <summary>The same problem with so many minutes on each repair that does not cure.</summary>
    public static SequencingProblem WithWrongMinutes(this SequencingProblem problem, double minutes) => new(
        problem.Objective, problem.Faults, problem.Checks,
        problem.Repairs.Select(repair => repair with { WrongMinutes = minutes }), problem.Access);
}
