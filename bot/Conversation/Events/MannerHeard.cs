namespace DxAssistant.Conversation.Events;

/// <summary>
/// How a complaint was told whose symptom is still asked for: it counts for the symptom that is chosen.
/// </summary>
/// <param name="Doubtful">Told with "maybe" or the like.</param>
/// <param name="ComesAndGoes">Told to happen only at times.</param>
public sealed record MannerHeard(bool Doubtful, bool ComesAndGoes) : CaseEvent;
