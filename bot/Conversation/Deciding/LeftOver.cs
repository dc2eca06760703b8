using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>After a verified repair: is that all, or does a second fault show?</summary>
internal sealed class LeftOver : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.State.Repairs is not [.., { Works: true } made]) return;
        ImmutableArray<(SeenResult Result, CheckPage Check)> beside =
            SideFindings.Beside(turn.Library, turn.View, new RepairId(made.Repair));
        foreach ((SeenResult result, CheckPage check) in beside)
            turn.Say(SegmentKind.Notice, "left-over-seen", Slot.Of("check", check.Title),
                Slot.Said("answer", result.Words));
        // What was told with the first trouble and waited for its turn.
        turn.Ask(QuestionKind.LeftOver, "", "ask-left-over",
            [turn.Option("none", "option-left-over-none"), .. beside.Select(seen => Seen(turn, seen.Check)),
                .. PutOff(turn), turn.Option("some", "option-left-over-some")]);
    }

    /// <summary>The beginning of the key of "mend what that check showed"; the check's id follows.</summary>
    public const string SeenBeside = "seen:";

    private static Option Seen(TurnDraft turn, CheckPage check) =>
        new(SeenBeside + check.Id.Value, turn.Speaker.Text("option-put-off", Slot.Of("symptom", check.Title)));

    private static IEnumerable<Option> PutOff(TurnDraft turn) =>
        from id in turn.State.PutOff
        let page = turn.Library.Symptoms.GetValueOrDefault(new SymptomId(id))
        where page is not null
        select new Option(id, turn.Speaker.Text("option-put-off", Slot.Of("symptom", page.Title)));
}
