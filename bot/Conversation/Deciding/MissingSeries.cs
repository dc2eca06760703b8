using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Codes, ratings and curves belong to a series: nothing is walked before it is known.</summary>
internal sealed class MissingSeries : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (UnconfirmedTold.SeriesOf(turn) is not null) return;
        turn.Ask(QuestionKind.Series, "", "ask-series",
            [.. turn.Library.Series.Values.Select(page => new Option(page.Id, page.Title.Text)),
                turn.Option("other-unit", "option-other-unit")]);
    }
}
