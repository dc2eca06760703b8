using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;

namespace DxAssistant.Conversation.Sheets;

/// <summary>One case that goes on away from the server. Not for many threads.</summary>
/// <param name="log">All events of the case so far; empty for a new one.</param>
public sealed class AwayCase(Assistant assistant, TitleBook titles, IEnumerable<CaseEvent> log)
{
    private CaseState state = Fold.Apply(CaseState.New, log);

    /// <summary>Takes one message.</summary>
    public AwayTurn Take(Message message)
    {
        var asked = state.Question;
        Turn turn = assistant.Take(state, message);
        state = Fold.Apply(state, turn.Events);
        return new AwayTurn(
            assistant.Library.Version, message.TurnId, message.By, SaidText.Of(message.Body, asked),
            SheetHead.Of(state, titles),
            turn.Events, turn.Reply);
    }
}
