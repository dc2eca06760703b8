namespace DxAssistant.Conversation.Events;

/// <summary>Something written down about the job beside the walk: the walk takes no notice of it.</summary>
/// <remarks>In the same log and under the same chain of hashes as the walk, in turns of their own.</remarks>
/// <param name="By">Who wrote it down.</param>
public abstract record AsideEvent(string By) : CaseEvent;
