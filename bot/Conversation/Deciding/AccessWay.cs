using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Brings the unit from the access state it is known to be in to another, one confirmed step at a time.</summary>
internal static class AccessWay
{
    /// <summary>Asks for the next step.</summary>
    /// <returns>False when the unit already stands so and nothing is to be asked.</returns>
    public static bool Ask(TurnDraft turn, AccessId there)
    {
        while (Next(turn, there) is { } page)
        {
            int done = turn.State.Approach is { } approach && approach.Access == page.Id.Value ? approach.Done : 0;
            if (done < page.Steps.Length)
            {
                if (done == 0) Lead(turn, page);
                AskStep(turn, page, done);
                return true;
            }

            turn.Happen(new AccessReached(page.Id.Value));
        }

        return false;
    }

    // The next state on the shortest way, or null at its end.
    private static AccessPage? Next(TurnDraft turn, AccessId there)
    {
        ImmutableArray<AccessId> way = turn.View.OpenAccess.Way(turn.View.Access, there);
        return way.Length > 1 ? turn.Library.Access[way[1]] : null;
    }

    private static void Lead(TurnDraft turn, AccessPage page)
    {
        turn.Say(SegmentKind.Notice, "access-lead", Speaker.From("access", page.Title));
        Cautions.SayAll(turn, page);
        turn.Say(SegmentKind.Notice, "local-codes");
    }

    private static void AskStep(TurnDraft turn, AccessPage page, int number)
    {
        AccessStep step = page.Steps[number];
        turn.Say(SegmentKind.Instruction, "access-step", Slot.Figure("number", number + 1),
            Slot.Figure("count", page.Steps.Length), Speaker.From("do", step.Do));
        if (step.Limit is { } limit)
            turn.Say(SegmentKind.Instruction, "access-limit", Speaker.From("reading", limit.Reading), Speaker.From("limit", limit.Text));
        turn.Ask(QuestionKind.Access, page.Id.Value,
            turn.Speaker.Say(SegmentKind.Question, step.Limit is null ? "ask-step" : "ask-step-reading"),
            step.Limit is null ? [turn.Option(Key(number), "option-done")] : [],
            step.Limit is { } asked ? [new Field(asked.Reading.Text, asked.Unit.Symbol, "", null)] : [],
            Offered.AtStep);
    }

    /// <summary>The key of the answer that confirms a step, so that a double tap never confirms two.</summary>
    public static string Key(int number) => number.ToString(CultureInfo.InvariantCulture);
}
