namespace DxAssistant.Conversation.Events;

/// <summary>
/// The walk's next step was chosen; it stands until it is answered, left out, or new evidence comes in.
/// </summary>
/// <param name="Kind">A check or a repair.</param>
/// <param name="Id">The id of the check or repair.</param>
/// <param name="Access">The access state it will be done in.</param>
public sealed record StepChosen(StepKind Kind, string Id, string Access) : CaseEvent;
