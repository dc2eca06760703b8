using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A hazard and what to do about it.</summary>
public sealed record CautionPage(string Id, Passage Title, Passage Danger, ImmutableArray<Passage> Do);
