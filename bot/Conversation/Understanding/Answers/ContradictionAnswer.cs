using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Understanding.Answers;

internal sealed class ContradictionAnswer : Answer
{
    /// <summary>The key of "both are right".</summary>
    public const string Keep = "keep";

    public override QuestionKind Kind => QuestionKind.Contradiction;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        string[] checks = question.Subject.Split(' ');
        if (key != Keep && !checks.Contains(key)) return false;
        turn.Happen(new ContradictionAccepted([.. checks]));
        if (key != Keep) turn.Happen(new CheckReopened(key));
        return true;
    }
}
