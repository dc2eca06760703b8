using DxAssistant.Graph.Planning;

namespace DxAssistant.Knowledge.Walks;

/// <summary>One rule that put a step in another's place.</summary>
/// <param name="Minutes">
/// The most expected minutes that this costs, 0 or more: see <see cref="WalkScene.ExtraBefore"/>.
/// </param>
public sealed record LaidMove(LaidRule Rule, PlannedStep From, PlannedStep To, double Minutes);
