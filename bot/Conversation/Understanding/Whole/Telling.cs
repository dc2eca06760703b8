using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Told;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>Enters a whole message as something to be confirmed.</summary>
internal static class Telling
{
    /// <param name="mannerOf">How surely a piece is said.</param>
    public static void Hear(TurnDraft turn, WholeMessage told, string text, IMatcher matcher,
        Func<string, (bool Doubtful, bool ComesAndGoes)> mannerOf)
    {
        WholeMessage all = WithComplaints(turn, told, matcher, mannerOf);
        bool knowsTrouble = all.TellsATrouble || turn.State.Code is not null || !turn.State.Symptoms.IsEmpty;
        MatchResult? match = null;
        // Without a complaint in one piece, it lies in all that is left, or in what was found.
        string complaint = all.Rest.IsEmpty ? text : string.Join(", ", all.Rest);
        if (!knowsTrouble && !LoneFinding.TellsNoMore(turn, all))
        {
            match = matcher.Match(complaint, turn.State.Series);
            if (match.TellsNothing && !all.Rest.IsEmpty) match = matcher.Match(complaint = text, turn.State.Series);
            if (Offering.CertainSymptom(match) is { } symptom)
                (all, match) = (all with { Items = all.Items.Add(Item(turn, symptom, complaint, mannerOf)) }, null);
        }

        turn.Happen(new WholeTold(all.Items));
        if (!knowsTrouble && !all.TellsATrouble) SayKept(turn, all);
        NoteUnclear(turn, knowsTrouble ? all : told);
        if (match is not null) Complaints.Hear(turn, complaint, match, mannerOf(complaint));
    }

    // Before a question for the trouble nobody should wonder whether a finding was heard.
    private static void SayKept(TurnDraft turn, WholeMessage told)
    {
        if (!told.Items.Any(item => item is { Taken: true, Thing: ToldThing.Outcome or ToldThing.Measured })) return;
        SeriesPage? series = UnconfirmedTold.SeriesOf(turn);
        turn.Say(SegmentKind.Understood, "understood-kept", ToldSpeech.List("items",
            [.. told.Items.Where(item => item.Taken).Select(item => ToldSpeech.Of(turn, series, item.Thing))
                .OfType<Segment>()]));
    }

    /// <summary>Says which pieces of a message are not used.</summary>
    public static void NoteUnclear(TurnDraft turn, WholeMessage told)
    {
        if (!told.Unclear.IsEmpty) turn.Note("notice-not-used", Slot.Said("words", string.Join("; ", told.Unclear)));
    }

    // Each piece that is left is a complaint beyond doubt, something of the trade that is not clear, or talk.
    private static WholeMessage WithComplaints(
        TurnDraft turn, WholeMessage told, IMatcher matcher, Func<string, (bool Doubtful, bool ComesAndGoes)> mannerOf)
    {
        foreach (string piece in told.Rest)
        {
            MatchResult match = matcher.Match(SeriesNames.Without(turn.Library, piece), turn.State.Series);
            if (Offering.CertainSymptom(match) is { } symptom && IsClear(turn, match))
                told = told
                    with { Items = told.With(Item(turn, symptom, piece, mannerOf)), Rest = told.Rest.Remove(piece) };
            else if (match is { Decision: MatchDecision.Fault or MatchDecision.Choices
                or MatchDecision.Clarify, IsVague: false })
                told = told with { Unclear = told.Unclear.Add(piece) };
        }

        return told;
    }

    // In the middle of a walk a piece is more likely part of an answer: "fan on auto" is no code of the mode.
    private static bool IsClear(TurnDraft turn, MatchResult match)
    {
        const double clear = 0.85;
        return turn.State.Symptoms.IsEmpty || match.Symptoms[0].Score >= clear;
    }

    /// <summary>A symptom that words tell.</summary>
    public static ToldItem Item(TurnDraft turn, string symptom, string words,
        Func<string, (bool Doubtful, bool ComesAndGoes)> mannerOf)
    {
        (bool isDoubtful, bool comesAndGoes) = mannerOf(words);
        return new ToldItem(new ToldThing.Symptom(symptom, Doubts.ConfidenceOf(isDoubtful, turn.Library.Settings),
            comesAndGoes), words, true);
    }
}
