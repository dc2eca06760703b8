using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Takes what is meant of what was offered, where the last may be "none of these".</summary>
internal abstract class OfferAnswer(CommandWords words) : Answer
{
    // A yes to one thing is that thing; to several it tells nothing.
    public override bool Hear(TurnDraft turn, OpenQuestion question, string text)
    {
        if (base.Hear(turn, question, text)) return true;
        bool isYes = words.Means("words-yes", text);
        if (!isYes && !words.Means("words-no", text)) return false;
        if (question.Options is [.., { Key: SymptomAnswer.None } none] && (!isYes || question.Options.Length == 2))
            return Choose(turn, question, isYes ? question.Options[0].Key : none.Key);
        turn.Say(SegmentKind.Notice, "notice-choose");
        return true;
    }
}
