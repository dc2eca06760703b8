namespace DxAssistant.Conversation.Events;

/// <summary>Something written down beside the walk was taken back: it counts as if it had not been written.</summary>
/// <param name="Turn">The turn in which it was written down.</param>
public sealed record AsideTakenBack(string By, string Turn) : AsideEvent(By);
