using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

internal sealed class SymptomAnswer(CommandWords words) : OfferAnswer(words)
{
    /// <summary>The key of "none of these".</summary>
    public const string None = "none";

    public override QuestionKind Kind => QuestionKind.Symptom;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (key == None)
        {
            if (turn.State.Symptoms.IsEmpty) turn.Ask(QuestionKind.Complaint, "", "ask-complaint-again");
            else turn.GoesOn = true;
            return true;
        }

        if (question.Options.Any(option => option.Key == key) && Clarifying.ChooseLeft(turn, key)) return true;
        if (!turn.Library.Symptoms.TryGetValue(new SymptomId(key), out var page)) return false;
        Complaints.Report(turn, page, page.Title.Text, Complaints.WithEarlier(turn, (false, false)));
        return true;
    }
}
