using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Turns plain words into a symptom, or into a few to choose from.</summary>
internal static class Complaints
{
    // Below this share of the best fit a symptom is not worth a line.
    private const double WorthListing = 0.5;

    private const string NewSymptom = "ask-new-symptom";

    public static void Hear(TurnDraft turn, string text, MatchResult match, (bool Doubtful, bool ComesAndGoes) manner)
    {
        manner = WithEarlier(turn, manner);
        bool asked = turn.State.Question is null
            or { Kind: QuestionKind.Complaint or QuestionKind.Symptom or QuestionKind.Closed };
        if (!asked && SuspectIn(turn, match) is { } suspect)
            turn.Say(SegmentKind.Notice, "notice-suspect", Slot.Of("fault", suspect.Title));
        else if (IsMisplaced(turn, text, match)) Misfit.Say(turn);
        else if (Offering.CertainSymptom(match) is { } symptom)
            Take(turn, turn.Library.Symptoms[new SymptomId(symptom)], text, asked, manner);
        else if (asked && Offering.Symptoms(turn.Library, match) is { IsEmpty: false } offered)
            Offer(turn, match, offered, text, manner);
        else if (asked && match.IsVague && Offering.General(turn.Library) is { } general)
            Clarifying.AskGenerally(turn, general);
        else if (match.RefusalId is { } page) Refusals.Say(turn, turn.Library.Refusals[page]);
        else if (!turn.Changed && asked && turn.State.Question is not { Kind: QuestionKind.Symptom })
            turn.Say(SegmentKind.Notice, "notice-nothing-here");
        else if (!turn.Changed) Misfit.Say(turn);
        else if (turn.State.Question is { Kind: QuestionKind.Symptom } open) turn.AskAgain(open);
    }

    /// <summary>How a complaint is told, what was said when its symptom began to be asked for included.</summary>
    public static (bool Doubtful, bool ComesAndGoes) WithEarlier(TurnDraft turn,
        (bool Doubtful, bool ComesAndGoes) manner) =>
        turn.State is { Question.Kind: QuestionKind.Symptom, Manner: { } earlier }
            ? (manner.Doubtful || earlier.Doubtful, manner.ComesAndGoes || earlier.ComesAndGoes)
            : manner;

    // In the middle of a walk the words may be an answer after all: they are not taken for a new symptom without
    // asking.
    private static void Take(
        TurnDraft turn, SymptomPage symptom, string text, bool asked, (bool Doubtful, bool ComesAndGoes) manner)
    {
        if (Pending(turn, symptom) is { } pending)
            turn.Happen(
                new WholeTold([Telling.Item(turn, pending.Id.Value, pending.Title.Text, _ => (false, false)),
                    Telling.Item(turn, symptom.Id.Value, text.Trim(), _ => manner)]));
        else if (asked || turn.State.Symptoms.IsEmpty
            || turn.State.Question is { Kind: QuestionKind.LeftOver or QuestionKind.Series or QuestionKind.Role })
            Report(turn, symptom, text, manner);
        else
        {
            Keep(turn, manner);
            AskNew(turn, symptom);
        }
    }

    // The fault that words at a step speak of: that somebody suspects it is no evidence.
    private static FaultPage? SuspectIn(TurnDraft turn, MatchResult match) =>
        turn.State is { Symptoms.IsEmpty: false, Question.Kind: QuestionKind.Check } && !turn.Changed
        && match is { Decision: MatchDecision.Fault, Candidates: [var best, ..] }
        && best.Id != FaultId.NoneOfThese.Value
        ? turn.Library.Faults.GetValueOrDefault(new FaultId(best.Id)) : null;

    // The trouble that was just asked about whether it is new, where another is told instead of an answer: neither is
    // lost.
    private static SymptomPage? Pending(TurnDraft turn, SymptomPage told) =>
        turn.State.Question is { Kind: QuestionKind.Symptom, Options: [var only, { Key: SymptomAnswer.None }] } open
        && open.From.Contains(new Provenance.Phrase(NewSymptom)) && only.Key != told.Id.Value
        ? turn.Library.Symptoms.GetValueOrDefault(new SymptomId(only.Key))
        : null;

    /// <summary>
    /// Asks whether one of the symptoms that something told beside a refusal means is a new trouble, in the middle of a
    /// walk that knows none of them.
    /// </summary>
    public static void AskWhetherNew(TurnDraft turn, ImmutableArray<SymptomPage> symptoms)
    {
        bool isWalking =
            turn.State.Question is { Kind: QuestionKind.Check or QuestionKind.Repair or QuestionKind.Access };
        if (isWalking && !symptoms.Any(symptom => turn.State.Symptoms.Any(known => known.Symptom == symptom.Id.Value)))
            AskNew(turn, [.. symptoms]);
    }

    private static void AskNew(TurnDraft turn, params SymptomPage[] symptoms) =>
        turn.Ask(QuestionKind.Symptom, "", NewSymptom,
            [.. symptoms.Select(symptom => new Option(symptom.Id.Value, symptom.Title.Text)),
                turn.Option(SymptomAnswer.None, "option-answer-to-question")]);

    // A lone word at a step is far more likely an answer that does not fit: "off" at the isolator is no dead unit,
    // "snow" no greeting.
    private static bool IsMisplaced(TurnDraft turn, string text, MatchResult match) =>
        !turn.Changed && IsBrief(text, match) && turn.State is { Symptoms.IsEmpty: false, Question: { } open }
        && (open.Kind == QuestionKind.Access
            || (open.Kind is QuestionKind.Check or QuestionKind.Repair or QuestionKind.Verify
                && Offering.CertainSymptom(match) is null));

    // One telling word, or a few that only a page for other talk would answer: "no change" is no question about another
    // machine.
    private static bool IsBrief(string text, MatchResult match)
    {
        const int few = 4;
        int count = PlainWords.Telling(text).Length;
        return count < 2
            || (count <= few && match.RefusalId is not null && !text.Contains('?', StringComparison.Ordinal));
    }

    // For the symptom that will be chosen.
    private static void Keep(TurnDraft turn, (bool Doubtful, bool ComesAndGoes) manner)
    {
        MannerHeard heard = new(manner.Doubtful, manner.ComesAndGoes);
        if (heard != (turn.State.Manner ?? new MannerHeard(false, false))) turn.Happen(heard);
    }

    private static bool IsFaint(MatchResult match, SymptomPage page) =>
        match.Symptoms.FirstOrDefault(hit => hit.Id == page.Id.Value) is { } found
            && found.Score < WorthListing * match.Symptoms[0].Score;

    /// <summary>Enters a symptom and says how it was taken.</summary>
    public static void Report(TurnDraft turn, SymptomPage symptom, string text,
        (bool Doubtful, bool ComesAndGoes) manner)
    {
        turn.Say(SegmentKind.Understood,
            manner.Doubtful ? "understood-symptom-doubt" : manner.ComesAndGoes
                ? "understood-symptom-sometimes"
                : "understood-symptom",
            Slot.Of("symptom", symptom.Title));
        Symptoms.Report(turn, symptom.Id.Value, text.Trim(),
            Doubts.ConfidenceOf(manner.Doubtful, turn.Library.Settings), manner.ComesAndGoes);
    }

    private static void Offer(TurnDraft turn, MatchResult match, ImmutableArray<SymptomPage> offered, string text,
        (bool Doubtful, bool ComesAndGoes) manner)
    {
        if (match.Decision == MatchDecision.Fault && match.Candidates[0].Id != FaultId.NoneOfThese.Value)
        {
            FaultPage fault = turn.Library.Faults[new FaultId(match.Candidates[0].Id)];
            turn.Say(SegmentKind.Understood, "understood-fault", Slot.Of("fault", fault.Title));
        }

        if (offered is [var only] && match.Decision == MatchDecision.Fault)
        {
            Report(turn, only, text, manner);
            return;
        }

        Keep(turn, manner);
        if (!Clarifying.Ask(turn, match, offered))
            Clarifying.Choose(turn, [.. offered.Where(page => !IsFaint(match, page))]);
    }
}
