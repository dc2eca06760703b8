using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Codes, ratings and curves belong to a series: nothing is walked before it is known.</summary>
internal sealed class MissingSeries : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (UnconfirmedTold.SeriesOf(turn) is not null) return;
        SayWhatWasHeard(turn);
        turn.Ask(QuestionKind.Series, "", "ask-series",
            [.. turn.Library.Series.Values.Select(page => new Option(page.Id, page.Title.Text)),
                turn.Option("other-unit", "option-other-unit")]);
    }

    // What was told is confirmed when the unit is known; until then nobody should wonder whether it was heard.
    private static void SayWhatWasHeard(TurnDraft turn)
    {
        if (!turn.Happened<WholeTold>()) return;
        ImmutableArray<Segment> heard =
            [.. turn.State.Unconfirmed.Where(item => item.Taken).Select(item => ToldSpeech.Of(turn, null, item.Thing))
                .OfType<Segment>()];
        if (!heard.IsEmpty) turn.Say(SegmentKind.Understood, "understood-so-far", ToldSpeech.List("items", heard));
    }
}
