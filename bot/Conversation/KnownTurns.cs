using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;

namespace DxAssistant.Conversation;

/// <summary>Turns kept in mind: people with the same complaint say and tap the same at first.</summary>
/// <remarks>
/// A turn leads to one state that all cases share which took it, so that the next turn is known by it too.
/// </remarks>
internal sealed class KnownTurns
{
    // Some ten kilobytes each.
    private const int Most = 4_096;

    private readonly Remembered<TurnKey, Turn> known = new(Most);

    /// <summary>The turn in mind, as an answer to this message, or the one worked out now.</summary>
    public Turn Of(CaseState state, Message message, Func<Turn> workOut)
    {
        if (TurnKey.Of(state, message.Body) is not { } key) return workOut();
        bool isNew = false;
        Turn turn = known.Of(key, () =>
        {
            isNew = true;
            return workOut();
        })!;
        return isNew ? turn : turn.SaidIn(message);
    }
}
