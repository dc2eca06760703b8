using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// Where a page asks for the mode in which the trouble shows, a mode told before is its answer: it is not asked again.
/// </summary>
internal sealed class ToldMode : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.State.Mode is not { } mode) return;
        foreach (CheckPage page in turn.Library.Checks.Values.Where(page => page.TellsMode && turn.View.IsFor(page)))
            if (page.Outcomes.FirstOrDefault(outcome => outcome.Id.Value == mode) is { } told
                && !IsAnswered(turn, page))
                turn.Happen(new OutcomeSeen(page.Id.Value, mode,
                    Doubts.Weigh(page.Outcomes.IndexOf(told), page.Outcomes.Length, 1), null, told.Answer.Text));
    }

    // What was answered at the question itself stands: it may be both modes.
    private static bool IsAnswered(TurnDraft turn, CheckPage page) =>
        turn.View.Results.Any(result => result.Check == page.Id.Value);
}
