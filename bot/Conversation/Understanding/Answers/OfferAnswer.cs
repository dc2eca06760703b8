using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Takes what is meant of what was offered, where the last may be "none of these".</summary>
internal abstract class OfferAnswer(CommandWords words) : Answer
{
    // A yes to one thing is that thing; to several it tells nothing.
    public override bool Hear(TurnDraft turn, OpenQuestion question, string text) =>
        base.Hear(turn, question, text) || question.Options switch
    {
        [var only, { Key: SymptomAnswer.None }] when words.Means("words-yes", text) => Choose(turn, question, only.Key),
        [.., { Key: SymptomAnswer.None } none] when words.Means("words-no", text) => Choose(turn, question, none.Key),
        _ => false,
    };
}
