using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Says that an answer does not fit; the second time in a row it says what may be answered.</summary>
internal static class Misfit
{
    private static readonly ImmutableArray<string> Phrases =
        ["notice-choose", "notice-choose-again", "notice-choose-other", "notice-sure-of-danger"];

    public static void Say(TurnDraft turn)
    {
        OpenQuestion? open = turn.State.Question;
        if (open is { Kind: QuestionKind.Check } && CheckQuestion.Page(turn, open.Subject) is { Stop.IsEmpty: false })
            turn.Say(SegmentKind.Notice, "notice-sure-of-danger");
        else if (!IsAgain(turn)) turn.Say(SegmentKind.Notice, "notice-choose");
        else if (open is { Fields.IsEmpty: true, Options.IsEmpty: false })
            turn.Say(SegmentKind.Notice, "notice-choose-again", Slot.Said("answers", Numbered(open.Options)));
        else turn.Say(SegmentKind.Notice, "notice-choose-other");
    }

    /// <summary>Whether the last message did not fit the question that is still open, or was none of it.</summary>
    public static bool IsAgain(TurnDraft turn) => turn.State.Question is { } open
        && turn.State.LastReply is { } last && last.Question?.Id == open.Id
        && last.Segments.Any(segment => segment.Kind == SegmentKind.Refusal
            || segment.From.OfType<Provenance.Phrase>().Any(phrase => Phrases.Contains(phrase.Id)));

    private static string Numbered(ImmutableArray<Option> options) =>
        string.Join("; ", options.Select((option, at) => $"{at + 1} {option.Label}"));
}
