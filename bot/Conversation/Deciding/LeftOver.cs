using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>After a verified repair: is that all, or does a second fault show?</summary>
internal sealed class LeftOver : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.State.Repairs is not [.., { Works: true }]) return;
        // What was told with the first trouble and waited for its turn.
        turn.Ask(QuestionKind.LeftOver, "", "ask-left-over",
            [turn.Option("none", "option-left-over-none"), .. PutOff(turn), turn.Option("some", "option-left-over-some")]);
    }

    private static IEnumerable<Option> PutOff(TurnDraft turn) =>
        from id in turn.State.PutOff
        let page = turn.Library.Symptoms.GetValueOrDefault(new SymptomId(id))
        where page is not null
        select new Option(id, turn.Speaker.Text("option-put-off", Slot.Of("symptom", page.Title)));
}
