using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Understanding.Answers;

internal sealed class SeriesAnswer : Answer
{
    public override QuestionKind Kind => QuestionKind.Series;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (key == "other-unit")
        {
            turn.Happen(new Closed("other-unit"));
            turn.Say(SegmentKind.Advice, "closed-other-unit");
            if (turn.View.Role.Rank == 0) turn.Say(SegmentKind.Advice, "closed-book-owner");
            return true;
        }

        if (!turn.Library.Series.TryGetValue(key, out var page)) return false;
        SeriesNames.Choose(turn, page);
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text) =>
        base.Hear(turn, question, text)
        || (SeriesNames.Find(turn.Library, text) is { } named && Choose(turn, question, named.Id));
}
