using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A hazard and what to do about it.</summary>
/// <param name="IsDeadly">True when it can kill: such cautions are read first.</param>
public sealed record CautionPage(string Id, Passage Title, Passage Danger, ImmutableArray<Passage> Do, bool IsDeadly);
