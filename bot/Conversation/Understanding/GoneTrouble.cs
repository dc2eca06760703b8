using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Notices words that deny the trouble itself: before it is told, and in the middle of the work.</summary>
internal sealed class GoneTrouble(Denials denials)
{
    /// <summary>Asks once whether the trouble is gone that words at a step deny.</summary>
    /// <returns>False when they do not, or when they answer the open question.</returns>
    public bool Hear(TurnDraft turn, string text)
    {
        if (!CanEnd(turn) || OptionMatcher.Find(text, turn.State.Question!.Options, turn.Library.Language) is not null)
            return false;
        if (!denials.SaysGone(text) && !IsDenied(turn, text)) return false;
        if (turn.State.IsGone is null) Ask(turn, new SymptomId(turn.State.Symptoms[0].Symptom));
        else Misfit.Say(turn);
        return true;
    }

    private static void Ask(TurnDraft turn, SymptomId trouble) => turn.Ask(QuestionKind.Gone, trouble.Value,
            turn.Speaker.Say(SegmentKind.Question, "ask-gone",
                Slot.Of("symptom", turn.Library.Symptoms[trouble].Title)),
            [turn.Option(GoneAnswer.Gone, "option-gone"), turn.Option(GoneAnswer.Stays, "option-gone-not")], [],
            Offered.Always);

    // Where something is measured, "no voltage" is a reading.
    private bool IsDenied(TurnDraft turn, string text) => turn.State.Question!.Fields.IsEmpty
        && turn.State.Symptoms.All(told => denials.Denies(text, new SymptomId(told.Symptom)));

    /// <summary>Whether first words tell of nothing wrong: a trouble that they deny, or something in order.</summary>
    public bool TellsNone(TurnDraft turn, string text, MatchResult match) =>
        turn.State is { Symptoms.IsEmpty: true, Code: null, Unconfirmed.IsEmpty: true, Question: null
            or { Kind: QuestionKind.Complaint or QuestionKind.Symptom } }
        && (denials.SaysGone(text) || IsDenied(text, match)
            || (Offering.CertainSymptom(match) is null && denials.Praises(text)));

    private bool IsDenied(string text, MatchResult match) => match.Symptoms is [var best, ..]
        ? denials.Denies(text, new SymptomId(best.Id))
        : denials.DeniesAny(text);

    // What smells burnt stays a danger when the smell is gone; a repair that is being made is tried as its page says.
    private static bool CanEnd(TurnDraft turn) =>
        turn.State is { Symptoms.IsEmpty: false, Question.Kind: QuestionKind.Check or QuestionKind.Meaning
            or QuestionKind.Access, Unverified: null }
        && turn.State.Symptoms.All(told => turn.Library.Symptoms.ContainsKey(new SymptomId(told.Symptom)))
        && !StepChooser.DemandsSafeState(turn.Library, turn.State) && EndOfWalk.Watching(turn.Library) is not null;
}
