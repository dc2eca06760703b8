using System.Collections.Immutable;

namespace DxAssistant.Graph.Planning.Trees;

/// <summary>What a tree writes down at a position.</summary>
/// <param name="ChecksLeft">
/// How many checks may be written below each branch: one number for each outcome that
/// <see cref="Position.Foresee"/> gives, in its order; for a repair one number, for when it does not help.
/// </param>
public sealed record TreeStep(PlannedStep Step, ImmutableArray<int> ChecksLeft)
{
    /// <summary>The step of a policy, which knows no limit.</summary>
    public static TreeStep Of(PlannedStep step) => new(step, []);
}
