using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Takes which trouble comes first; the others wait.</summary>
internal sealed class FirstAnswer : Answer
{
    public override QuestionKind Kind => QuestionKind.First;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (!question.Options.Any(option => option.Key == key)) return false;
        foreach (Option other in question.Options.Where(option => option.Key != key))
        {
            turn.Happen(new SymptomPutOff(other.Key));
            if (turn.Library.Symptoms.TryGetValue(new SymptomId(other.Key), out var page))
                turn.Say(SegmentKind.Understood, "understood-put-off", Slot.Of("symptom", page.Title));
        }

        return true;
    }
}
