using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Turns plain words into a symptom, or into a few to choose from.</summary>
internal static class Complaints
{
    private const int MostChoices = 5;

    // A symptom is taken without asking back when it fits this well and no other comes near; both are of the matcher's scale.
    private const double Certain = 0.65;
    private const double Lead = 0.15;

    // Below these shares of the best fit a symptom is not worth a line, and not worth a question.
    private const double WorthListing = 0.5;
    private const double WorthOffering = 0.4;

    public static void Hear(TurnDraft turn, string text, MatchResult match, (bool Doubtful, bool ComesAndGoes) manner)
    {
        bool asked = turn.State.Question is null or { Kind: QuestionKind.Complaint or QuestionKind.Symptom or QuestionKind.Closed };
        if (CertainSymptom(match) is { } symptom) Take(turn, turn.Library.Symptoms[new SymptomId(symptom)], text, asked, manner);
        else if (asked && Offered(turn, match) is { IsEmpty: false } offered) Offer(turn, match, offered, text, manner);
        else if (match.RefusalId is { } page) Refusals.Say(turn, turn.Library.Refusals[page]);
        else if (!turn.Changed) turn.Say(SegmentKind.Notice, asked ? "notice-nothing-here" : "notice-choose");
        else if (turn.State.Question is { Kind: QuestionKind.Symptom } open) turn.AskAgain(open);
    }

    // In the middle of a walk the words may be an answer after all: they are not taken for a new symptom without asking.
    private static void Take(
        TurnDraft turn, SymptomPage symptom, string text, bool asked, (bool Doubtful, bool ComesAndGoes) manner)
    {
        if (asked || turn.State.Symptoms.IsEmpty || turn.State.Question is { Kind: QuestionKind.LeftOver }) Report(turn, symptom, text, manner);
        else
            turn.Ask(QuestionKind.Symptom, "", "ask-new-symptom", new Option(symptom.Id.Value, symptom.Title.Text),
                turn.Option(SymptomAnswer.None, "option-answer-to-question"));
    }

    /// <summary>The symptom that words mean beyond doubt; null when there is none.</summary>
    public static string? CertainSymptom(MatchResult match) => match.Symptoms switch
    {
        [{ Score: >= Certain } only] => only.Id,
        [{ Score: >= Certain } first, var second, ..] when first.Score - second.Score >= Lead => first.Id,
        _ => null,
    };

    // The symptoms the words come near to; when they name a fault instead, the symptoms it shows.
    private static ImmutableArray<SymptomPage> Offered(TurnDraft turn, MatchResult match)
    {
        ImmutableArray<SymptomPage> near = [.. match.Symptoms
            .Where(hit => hit.Score >= WorthOffering * match.Symptoms[0].Score)
            .Select(hit => turn.Library.Symptoms[new SymptomId(hit.Id)])];
        IEnumerable<SymptomPage> shown = match.Decision == MatchDecision.Fault || near.IsEmpty
            ? match.Candidates.Take(match.Decision == MatchDecision.Fault ? 1 : MostChoices)
                .SelectMany(candidate => ShownBy(turn, new FaultId(candidate.Id)))
            : [];
        return [.. near.Concat(shown).Distinct()];
    }

    private static bool IsFaint(MatchResult match, SymptomPage page) =>
        match.Symptoms.FirstOrDefault(hit => hit.Id == page.Id.Value) is { } found && found.Score < WorthListing * match.Symptoms[0].Score;

    private static IEnumerable<SymptomPage> ShownBy(TurnDraft turn, FaultId fault) =>
        turn.Library.Graph.SymptomsOf(fault)
            .OrderByDescending(symptom => symptom.Causes[fault]).ThenBy(symptom => symptom.Id)
            .Select(symptom => turn.Library.Symptoms[symptom.Id]);

    private static void Report(TurnDraft turn, SymptomPage symptom, string text, (bool Doubtful, bool ComesAndGoes) manner)
    {
        turn.Say(SegmentKind.Understood,
            manner.Doubtful ? "understood-symptom-doubt" : manner.ComesAndGoes ? "understood-symptom-sometimes" : "understood-symptom",
            Slot.Of("symptom", symptom.Title));
        Symptoms.Report(turn, symptom.Id.Value, text.Trim(), Doubts.ConfidenceOf(manner.Doubtful), manner.ComesAndGoes);
    }

    private static void Offer(TurnDraft turn, MatchResult match, ImmutableArray<SymptomPage> offered, string text,
        (bool Doubtful, bool ComesAndGoes) manner)
    {
        if (match.Decision == MatchDecision.Fault)
        {
            FaultPage fault = turn.Library.Faults[new FaultId(match.Candidates[0].Id)];
            turn.Say(SegmentKind.Understood, "understood-fault", Slot.Of("fault", fault.Title));
        }

        if (offered is [var only] && match.Decision == MatchDecision.Fault) Report(turn, only, text, manner);
        else if (!Clarifying.Ask(turn, match, offered)) Clarifying.Choose(turn, [.. offered.Where(page => !IsFaint(match, page))]);
    }
}
