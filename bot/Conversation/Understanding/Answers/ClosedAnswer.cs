using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Understanding.Answers;

internal sealed class ClosedAnswer : Answer
{
    public override QuestionKind Kind => QuestionKind.Closed;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (key != "start-over") return false;
        turn.Happen(new StartedOver(AsksWho: true));
        turn.Say(SegmentKind.Notice, "notice-started-over");
        return true;
    }
}
