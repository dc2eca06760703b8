using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Told;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>
/// Enters a confirmed whole message into the case: first the unit and the person, then the trouble, then what was
/// found.
/// </summary>
internal static class ToldSettling
{
    public static void Settle(TurnDraft turn)
    {
        SeriesPage? series = UnconfirmedTold.SeriesOf(turn);
        ImmutableArray<ToldItem> taken =
            [.. turn.State.Unconfirmed.Where(item => item.Taken
                && ToldSpeech.Of(turn, series, item.Thing) is not null)];
        turn.Happen(new ToldSettled());
        foreach (ToldItem item in taken.OrderBy(item => Rank(item.Thing))) Enter(turn, item);
    }

    private static int Rank(ToldThing thing) => thing switch
    {
        ToldThing.Unit or ToldThing.AtUnit or ToldThing.Mode => 0,
        ToldThing.Code or ToldThing.Symptom => 1,
        ToldThing.Tried => 2,
        _ => 3,
    };

    private static void Enter(TurnDraft turn, ToldItem item)
    {
        switch (item.Thing)
        {
            case ToldThing.Unit unit: turn.Happen(new SeriesChosen(unit.Series)); break;
            case ToldThing.AtUnit person: turn.Happen(new RoleStated(person.Role)); break;
            case ToldThing.Mode mode: turn.Happen(new ModeStated(mode.Running)); break;
            case ToldThing.Code code: EnterCode(turn, code); break;
            case ToldThing.Symptom symptom: Symptoms.Report(turn, symptom.Id, item.Words, symptom.Confidence,
                symptom.ComesAndGoes); break;
            case ToldThing.Outcome outcome: EnterOutcome(turn, outcome, item.Words); break;
            case ToldThing.Measured measured: EnterReadings(turn, measured); break;
            case ToldThing.Tried tried: EnterRepair(turn, tried, item.Words); break;
        }
    }

    // What can be several codes is asked when all else is entered.
    private static void EnterCode(TurnDraft turn, ToldThing.Code code)
    {
        if (turn.View.Series is { } series && CodeLookUp.Only(series, code.Shown, code.Look) is { } known)
            Symptoms.ReportCode(turn, known);
        else turn.Happen(new CodeReported(code.Shown, code.Look));
    }

    private static void EnterOutcome(TurnDraft turn, ToldThing.Outcome outcome, string words)
    {
        CheckPage page = turn.Library.Checks[new CheckId(outcome.Check)];
        int place = turn.Library.Graph.Find(page.Id)!.IndexOf(new OutcomeId(outcome.Seen));
        turn.Happen(new OutcomeSeen(outcome.Check, outcome.Doubtful ? null : outcome.Seen,
            Doubts.Weigh(place, page.Outcomes.Length, Doubts.ConfidenceOf(outcome.Doubtful, turn.Library.Settings)),
            null,
            outcome.Doubtful ? words : page.Outcomes[place].Answer.Text)
        {
            Leaves = StateLeft.By(turn, page),
        });
    }

    private static void EnterReadings(TurnDraft turn, ToldThing.Measured measured)
    {
        CheckPage page = turn.Library.Checks[new CheckId(measured.Check)];
        turn.Happen(new ReadingsGiven(measured.Check, measured.Readings));
        turn.IsDoubted = measured.Doubtful;
        ReadingVerdict.GiveTold(turn, page);
        turn.IsDoubted = false;
    }

    private static void EnterRepair(TurnDraft turn, ToldThing.Tried tried, string words)
    {
        Repair repair = turn.Library.Graph.Find(new RepairId(tried.Repair))!;
        FaultId fault = turn.View.Belief.Ranked.Select(ranked => ranked.Id)
            .FirstOrDefault(repair.Fixes.Contains, repair.Fixes[0]);
        turn.Happen(new RepairTriedBefore(tried.Repair, fault.Value, words));
    }
}
