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
    /// <summary>Asks for the next step, if there is one to ask.</summary>
    public static AccessProgress Ask(TurnDraft turn, AccessId there)
    {
        while (turn.View.Access != there)
        {
            if (turn.View.OpenAccess.Way(turn.View.Access, there) is not [_, var next, ..]) return AccessProgress.NoWay;
            AccessPage page = turn.Library.Access[next];
            int done = turn.State.Approach is { } approach && approach.Access == page.Id.Value ? approach.Done : 0;
            if (done < page.Steps.Length)
            {
                if (done == 0) Lead(turn, page);
                AskStep(turn, page, done);
                return AccessProgress.Asked;
            }

            turn.Happen(new AccessReached(page.Id.Value));
        }

        return AccessProgress.There;
    }

    private static void Lead(TurnDraft turn, AccessPage page)
    {
        turn.Say(SegmentKind.Notice, "access-lead", Slot.Of("access", page.Title));
        Cautions.SayAll(turn, page);
        turn.Say(SegmentKind.Notice, "local-codes");
    }

    private static void AskStep(TurnDraft turn, AccessPage page, int number)
    {
        AccessStep step = page.Steps[number];
        turn.Say(SegmentKind.Instruction, "access-step", Slot.Figure("number", number + 1),
            Slot.Figure("count", page.Steps.Length), Slot.Of("do", step.Do));
        if (step.Limit is { } limit)
            turn.Say(SegmentKind.Instruction, "access-limit", Slot.Of("reading", limit.Reading), Slot.Of("limit", limit.Text));
        turn.Ask(QuestionKind.Access, page.Id.Value,
            turn.Speaker.Say(SegmentKind.Question, step.Limit is null ? "ask-step" : "ask-step-reading"),
            step.Limit is null ? [turn.Option(Key(number), "option-done")] : [],
            step.Limit is { } asked ? [new Field(asked.Reading.Text, asked.Unit.Symbol, "", null)] : [],
            Offered.AtStep);
    }

    /// <summary>The key of the answer that confirms a step, so that a double tap never confirms two.</summary>
    public static string Key(int number) => number.ToString(CultureInfo.InvariantCulture);
}
