using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Told;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Refuses a dangerous request, and hears what else its message tells.</summary>
internal sealed class RefusedMessages(IMatcher matcher, WholeReader whole)
{
    /// <summary>Says the fixed answer and the safe way.</summary>
    /// <remarks>
    /// A message that only sounds like a request, and complains of something, may have meant no more than that.
    /// </remarks>
    public void Refuse(TurnDraft turn, string text, MatchResult match)
    {
        // Who says to be the owner beside it is answered as one.
        if (turn.State.Role is null) ToldBeside.Owner(turn, whole.Read(turn, text));
        if (match.IsByLikeness && !Troubles(turn, text, match).IsEmpty)
            turn.Say(SegmentKind.Notice, "notice-in-case");
        Refusals.Say(turn, match);
    }

    /// <summary>Hears what else the message complains of.</summary>
    public void HearBesides(TurnDraft turn, string text, MatchResult match)
    {
        ImmutableArray<SymptomPage> told = Troubles(turn, text, match);
        if (told.IsEmpty) return;
        if (!ComplaintPieces.IsFirst(turn)) Complaints.AskWhetherNew(turn, told);
        else if (told is [var only])
            turn.Happen(new WholeTold([Telling.Item(turn, only.Id.Value, text.Trim(), whole.MannerIn(text))]));
        else Clarifying.Choose(turn, told);
    }

    // What asks for something dangerous in so many words complains only in another sentence.
    private ImmutableArray<SymptomPage> Troubles(TurnDraft turn, string text, MatchResult match) =>
        match.IsByLikeness && Troubles(turn, match) is { IsEmpty: false } told
            ? told
            : Pieces(turn, text).Select(piece => matcher.Match(piece, turn.State.Series))
                .Where(heard => heard.IsByLikeness || heard.Decision is not MatchDecision.Refuse)
                .Select(heard => Troubles(turn, heard)).FirstOrDefault(heard => !heard.IsEmpty, []);

    private static ImmutableArray<SymptomPage> Troubles(TurnDraft turn, MatchResult heard) =>
        Offering.PlainSymptoms(heard) is { IsEmpty: false } plain
            ? [.. plain.Select(id => turn.Library.Symptoms[new SymptomId(id)])]
            : heard is { Besides: MatchDecision.Fault }
                ? Offering.Symptoms(turn.Library, heard with { Decision = MatchDecision.Fault })
                : [];

    private IEnumerable<string> Pieces(TurnDraft turn, string text) =>
        ComplaintPieces.Sentences(text).Concat(whole.Cut(text) is { Length: > 1 } cut ? cut : []);
}
