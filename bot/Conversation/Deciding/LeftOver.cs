using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Deciding;

/// <summary>After a verified repair: is that all, or does a second fault show?</summary>
internal sealed class LeftOver : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.State.Repairs is not [.., { Works: true }]) return;
        turn.Ask(QuestionKind.LeftOver, "", "ask-left-over",
            turn.Option("none", "option-left-over-none"), turn.Option("some", "option-left-over-some"));
    }
}
