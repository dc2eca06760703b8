using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Deciding;

/// <summary>A closed case offers a new start; words bring it to life again.</summary>
internal sealed class ClosedCase : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.State.ClosedHow is null) return;
        turn.Say(SegmentKind.Notice, "notice-closed");
        turn.Ask(QuestionKind.Closed, "", "ask-closed", turn.Option("start-over", "option-start-over"));
    }
}
