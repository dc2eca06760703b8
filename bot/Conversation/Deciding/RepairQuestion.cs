using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Shows a repair, its parts, cautions and steps, and asks whether it is done.</summary>
internal static class RepairQuestion
{
    public static void Ask(TurnDraft turn, RepairPage page)
    {
        turn.Say(SegmentKind.Repair, "repair-lead", Slot.Of("repair", page.Title));
        if (!page.Parts.IsEmpty)
            turn.Say(SegmentKind.Repair, "repair-parts",
                Slot.Of("parts", string.Join(", ", page.Parts), page.Title.Place));
        Cautions.SayBefore(turn, page);
        turn.Quote(SegmentKind.Repair, page.Steps);
        turn.Ask(QuestionKind.Repair, page.Id.Value,
            turn.Speaker.Say(SegmentKind.Question, page.LeftToOthers ? "ask-repair-others" : "ask-repair"),
            [turn.Option(RepairAnswer.Done, page.LeftToOthers ? "option-repair-others" : "option-repair-done")], [],
            Offered.AtStep);
    }
}
