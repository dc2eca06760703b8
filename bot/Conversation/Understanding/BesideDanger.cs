using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Told;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// What a message tells beside a sign of danger: who is there and a clear trouble count at once, what is not clear is
/// asked for, so that nothing is lost.
/// </summary>
internal sealed class BesideDanger(WholeReader whole, IMatcher matcher)
{
    // Of a trouble that is not clear so many are offered.
    private const int MostOffered = 3;

    /// <param name="rest">The pieces of the message that tell of no danger.</param>
    public void Keep(TurnDraft turn, ImmutableArray<string> rest)
    {
        if (rest.IsEmpty) return;
        WholeMessage told = whole.Read(turn, string.Join(", ", rest));
        TakePerson(turn, told);
        ImmutableArray<ToldItem> items =
        [
            .. told.Items.Where(item => item.Thing is not (ToldThing.Unit or ToldThing.AtUnit)),
            .. told.Rest.SelectMany(piece => Troubles(turn, piece)),
        ];
        foreach (ToldItem item in items.Where(IsClear)) TakeTrouble(turn, (ToldThing.Symptom)item.Thing, item.Words);
        ImmutableArray<ToldItem> open =
            [.. items.Where(item => !IsClear(item) && !IsKnown(turn, item)).DistinctBy(item => item.Thing)];
        if (!open.IsEmpty) turn.Happen(new WholeTold(open));
        Telling.NoteUnclear(turn, told);
    }

    private static bool IsClear(ToldItem item) => item is { Thing: ToldThing.Symptom, Taken: true };

    // What no fault explains together with the danger waits until the danger is dealt with.
    private static void TakeTrouble(TurnDraft turn, ToldThing.Symptom trouble, string words)
    {
        SymptomPage page = turn.Library.Symptoms[new SymptomId(trouble.Id)];
        if (turn.State.Symptoms.Any(known => known.Symptom == trouble.Id)) return;
        if (turn.State.Symptoms.IsEmpty || NoCommonCause.Joins(turn, page.Id))
        {
            Complaints.Report(turn, page, words, (trouble.Confidence < 1, trouble.ComesAndGoes));
            return;
        }

        turn.Happen(new SymptomPutOff(trouble.Id));
        turn.Say(SegmentKind.Understood, "understood-put-off", Slot.Of("symptom", page.Title));
    }

    private static void TakePerson(TurnDraft turn, WholeMessage told)
    {
        if (turn.State.Role is null
            && told.Items.Select(item => item.Thing).OfType<ToldThing.AtUnit>().FirstOrDefault() is { } person)
            RoleAnswer.Take(turn, turn.Library.Roles.First(page => page.Role.Id == person.Role));
    }

    // What is clear is taken; of what may be several things none is, before somebody says which.
    private ImmutableArray<ToldItem> Troubles(TurnDraft turn, string piece)
    {
        MatchResult match = matcher.Match(piece, turn.State.Series);
        (bool isDoubtful, bool comesAndGoes) = whole.MannerOf(piece);
        double confidence = Doubts.ConfidenceOf(isDoubtful, turn.Library.Settings);
        if (Offering.CertainSymptom(match) is { } certain)
            return [new ToldItem(new ToldThing.Symptom(certain, confidence, comesAndGoes), piece, true)];
        if (match.Decision is not (MatchDecision.Fault or MatchDecision.Choices or MatchDecision.Clarify)) return [];
        return
        [
            .. Offering.Symptoms(turn.Library, match).Take(MostOffered)
                .Select(
                    page => new ToldItem(new ToldThing.Symptom(page.Id.Value, confidence, comesAndGoes), piece, false)),
        ];
    }

    private static bool IsKnown(TurnDraft turn, ToldItem item) =>
        item.Thing is ToldThing.Symptom symptom && turn.State.Symptoms.Any(known => known.Symptom == symptom.Id);
}
