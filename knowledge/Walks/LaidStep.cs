using System.Collections.Immutable;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Knowledge.Walks;

/// <summary>What is done next, and how it came from the plan.</summary>
/// <param name="Plan">The plan the rules were laid over.</param>
/// <param name="Moves">From the plan's step to this one; empty when they are the same.</param>
public sealed record LaidStep(Plan Plan, PlannedStep Step, ImmutableArray<LaidMove> Moves)
{
    /// <summary>
    /// The rules that would have put another step in this one's place at more minutes than they may cost.
    /// </summary>
    public ImmutableArray<LaidRule> HeldBack { get; init; } = [];

    /// <summary>The step itself as the plan has it; null when the plan did not weigh it.</summary>
    public PlanOption? Option => Plan.Options.FirstOrDefault(option => option.Step == Step);

    /// <summary>The last move made by a rule; null when it made none.</summary>
    public LaidMove? By(LaidRule rule) => Moves.LastOrDefault(move => move.Rule == rule);
}
