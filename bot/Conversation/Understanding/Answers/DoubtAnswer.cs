using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Takes whether a trouble that was told with doubt is there.</summary>
internal sealed class DoubtAnswer(CommandWords words) : Answer
{
    /// <summary>The key of "it is there".</summary>
    public const string Yes = "yes";

    /// <summary>The key of "it is not there".</summary>
    public const string No = "no";

    /// <summary>The key of "cannot tell".</summary>
    public const string Unknown = "unknown";

    public override QuestionKind Kind => QuestionKind.Doubt;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (key is not (Yes or No or Unknown)) return false;
        turn.Happen(new DoubtSettled(question.Subject, key switch { Yes => true, No => false, _ => null }));
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text) =>
        words.Means("words-yes", text) ? Choose(turn, question, Yes)
        : words.Means("words-no", text) ? Choose(turn, question, No)
        : base.Hear(turn, question, text);
}
