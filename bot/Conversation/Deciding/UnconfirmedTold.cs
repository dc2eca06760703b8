using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Conversation.Told;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// What a whole message told is said back in one line; nothing of it counts before that is confirmed.
/// </summary>
internal sealed class UnconfirmedTold : IDecision
{
    public void Decide(TurnDraft turn)
    {
        SeriesPage? series = SeriesOf(turn);
        ImmutableArray<(int Place, ToldItem Item, Segment Said)> items =
        [
            .. turn.State.Unconfirmed.Select((item, place) => (place, item, ToldSpeech.Of(turn, series, item.Thing)))
                .Where(entry => entry.Item3 is not null).Select(entry => (entry.place, entry.item, entry.Item3!)),
        ];
        if (items.IsEmpty) return;
        if (turn.State.Code is { } code && series is not null
            && CodeLookUp.Only(series, code, turn.State.Look) is { } shown)
            DangerTrouble.Warn(turn, shown.Symptom);
        ImmutableArray<Segment> taken = [.. items.Where(entry => entry.Item.Taken).Select(entry => entry.Said)];
        if (!taken.IsEmpty) turn.Say(SegmentKind.Understood, "understood-whole", ToldSpeech.List("items", taken));
        foreach (string words in Undecided<ToldThing.Tried>(turn.State))
            turn.Say(SegmentKind.Notice, "notice-which-part", Slot.Said("words", words));
        foreach (string words in Undecided<ToldThing.Symptom>(turn.State))
            turn.Say(SegmentKind.Notice, "notice-which-trouble", Slot.Said("words", words));
        turn.Ask(QuestionKind.Told, "", taken.IsEmpty ? "ask-whole-none" : "ask-whole",
        [
            turn.Option(ToldAnswer.Yes, taken.IsEmpty ? "option-go-on" : "option-whole"),
            .. items.Select(entry => new Option(ToldAnswer.Key(entry.Place), turn.Speaker.Text(
                entry.Item.Taken ? "option-not-so" : "option-add", new Slot("item", entry.Said.Text, [])))),
            .. taken.IsEmpty ? (ImmutableArray<Option>)[] : [turn.Option(ToldAnswer.Nothing, "option-none-of-it")],
        ]);
    }

    /// <summary>The series of the case, or the one that waits to be confirmed.</summary>
    public static SeriesPage? SeriesOf(TurnDraft turn) =>
        turn.State.Unconfirmed.Where(item => item.Taken).Select(item => item.Thing).OfType<ToldThing.Unit>()
            .Select(unit => turn.Library.Series.GetValueOrDefault(unit.Series)).FirstOrDefault() ?? turn.View.Series;

    // Words that several repairs or troubles fit, as long as none of them was chosen.
    private static IEnumerable<string> Undecided<T>(CaseState state) where T : ToldThing => state.Unconfirmed
        .Where(item => item.Thing is T)
        .GroupBy(item => item.Words, StringComparer.Ordinal)
        .Where(same => same.Count() > 1 && same.All(item => !item.Taken))
        .Select(same => same.Key);
}
