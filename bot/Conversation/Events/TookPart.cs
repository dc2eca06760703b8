namespace DxAssistant.Conversation.Events;

/// <summary>Somebody works on the case from here on.</summary>
/// <param name="As">What they were then: <c>technician</c>, <c>desk</c> or <c>administrator</c>.</param>
public sealed record TookPart(string By, string As) : AsideEvent(By);
