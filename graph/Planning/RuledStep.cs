using System.Collections.Immutable;

namespace DxAssistant.Graph.Planning;

/// <summary>A step and the rules it came from.</summary>
/// <param name="Losses">Empty when it is the plan's own.</param>
public sealed record RuledStep(PlannedStep Step, ImmutableArray<RuleLoss> Losses)
{
    /// <summary>The rules that would have chosen another step at more minutes than they may cost.</summary>
    public ImmutableArray<string> HeldBack { get; init; } = [];
}
