using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// Brings the unit from the access state it is known to be in to another, one confirmed step at a time.
/// </summary>
internal static class AccessWay
{
    /// <summary>Asks for the next step, if there is one to ask.</summary>
    public static AccessProgress Ask(TurnDraft turn, AccessId there)
    {
        while (turn.View.Access != there)
        {
            if (turn.View.OpenAccess.Way(turn.View.Access, there) is not [_, var next, ..]) return AccessProgress.NoWay;
            AccessPage page = turn.Library.Access[next];
            if (Next(turn, page) is { } open)
            {
                if (turn.State.Approach?.Access != page.Id.Value) Lead(turn, page);
                AskStep(turn, page, open);
                return AccessProgress.Asked;
            }

            turn.Happen(new AccessReached(page.Id.Value));
        }

        return AccessProgress.There;
    }

    /// <summary>The place of the step that is to be done next on the way to a state; null when none is left.</summary>
    /// <remarks>
    /// What holds in the state where the unit stands is not asked for again: a supply proved dead stays so until it is
    /// switched on.
    /// </remarks>
    public static int? Next(TurnDraft turn, AccessPage page)
    {
        int done = turn.State.Approach is { } approach && approach.Access == page.Id.Value ? approach.Done : 0;
        return Enumerable.Range(done, page.Steps.Length - done).Where(place => IsToDo(turn, page.Steps[place]))
            .Select(place => (int?)place).FirstOrDefault();
    }

    private static bool IsToDo(TurnDraft turn, AccessStep step) => !step.DoneIn.Contains(turn.View.Access)
        && (step.OnlyAt is not { } danger
            || turn.State.Symptoms.Any(told =>
                turn.Library.Symptoms.GetValueOrDefault(new SymptomId(told.Symptom))?.Danger == danger));

    private static void Lead(TurnDraft turn, AccessPage page)
    {
        turn.Say(SegmentKind.Notice, "access-lead", Slot.Of("access", page.Title));
        Cautions.SayAll(turn, page);
        turn.Say(SegmentKind.Notice, "local-codes");
    }

    private static void AskStep(TurnDraft turn, AccessPage page, int number)
    {
        AccessStep step = page.Steps[number];
        turn.Say(SegmentKind.Instruction, "access-step",
            Slot.Figure("number", page.Steps.Take(number + 1).Count(passed => IsToDo(turn, passed))),
            Slot.Figure("count", page.Steps.Count(asked => IsToDo(turn, asked))), Slot.Of("do", step.Do));
        if (step.Limit is { } limit)
            turn.Say(SegmentKind.Instruction, "access-limit", Slot.Of("reading", limit.Reading),
                Slot.Of("limit", limit.Text));
        turn.Ask(QuestionKind.Access, page.Id.Value,
            turn.Speaker.Say(SegmentKind.Question, step.Limit is null ? "ask-step" : "ask-step-reading"),
            step.Limit is null ? [turn.Option(Key(number), "option-done")] : [],
            step.Limit is { } asked ? [new Field(asked.Reading.Text, asked.Unit.Symbol, "", null)] : [],
            Offered.AtStep);
    }

    /// <summary>The key of the answer that confirms a step, so that a double tap never confirms two.</summary>
    public static string Key(int number) => number.ToString(CultureInfo.InvariantCulture);
}
