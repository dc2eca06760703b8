namespace DxAssistant.Knowledge.Content.Model;

/// <summary>One step towards an access state.</summary>
/// <param name="Limit">The reading that proves it; null when a look or an act is enough.</param>
public sealed record AccessStep(Passage Do, SafeLimit? Limit);
