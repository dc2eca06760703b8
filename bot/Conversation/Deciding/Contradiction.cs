using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Results that cannot both be right are taken again before they lead the walk astray.</summary>
internal sealed class Contradiction : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (!turn.View.Belief.Contradicted) return;
        ImmutableArray<CheckPage> conflicts = [.. turn.View.Belief.Conflicts
            .Where(check => !turn.State.Accepted.Contains(check.Value))
            .Select(check => turn.Library.Checks[check])];
        if (conflicts.IsEmpty) return;
        if (conflicts is [var alone]) turn.Say(SegmentKind.Notice, "contradiction-alone", Slot.Of("check", alone.Title));
        else
            turn.Say(SegmentKind.Notice, "contradiction", Slot.List("checks", [.. conflicts.Select(page => page.Title)]));
        turn.Ask(QuestionKind.Contradiction, string.Join(' ', conflicts.Select(page => page.Id.Value)), "ask-contradiction",
            [.. conflicts.Select(page => new Option(page.Id.Value, page.Title.Text)),
                turn.Option("keep", "option-keep-both")]);
    }
}
