using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Told;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Complaints that are a part of a message: "it leaks water and makes a loud noise".</summary>
internal sealed class ComplaintPieces(IMatcher matcher, WholeReader whole)
{
    /// <summary>
    /// Hears two complaints of which the whole message makes none or loses one: each is looked for in its own piece.
    /// </summary>
    /// <returns>False when the message is one complaint, or not the first that is told.</returns>
    public bool Hear(TurnDraft turn, string text, MatchResult match)
    {
        if (!IsFirst(turn)) return false;
        if (TellsOneEach(turn, whole.Cut(text), whole.MannerIn(text)) is { IsEmpty: false } each)
        {
            turn.Happen(new WholeTold(each));
            return true;
        }

        if (match.Decision is MatchDecision.Fault) return false;
        bool isCertain = Offering.CertainSymptom(match) is not null;
        ImmutableArray<string> pieces = isCertain ? Tellings(turn, text) : whole.Cut(text);
        ImmutableArray<(string Piece, MatchResult Match)> certain = Certain(turn, pieces);
        if (pieces.Length < 2 || certain.IsEmpty) return false;
        if (certain is not [var only])
            Telling.Hear(turn, new WholeMessage([], [], pieces), text, matcher, whole.MannerIn(text));
        else if (!isCertain) Complaints.Hear(turn, text, only.Match, whole.MannerIn(text)(only.Piece));
        return certain.Length > 1 || !isCertain;
    }

    // "It leaks water and makes a loud noise": each piece tells a trouble that no other does, one of them for certain.
    // Of what may be several troubles none counts before somebody says which.
    private ImmutableArray<ToldItem> TellsOneEach(TurnDraft turn, ImmutableArray<string> pieces,
        Func<string, (bool Doubtful, bool ComesAndGoes)> mannerOf)
    {
        const int fewest = 2;
        if (pieces.Length < 2 || pieces.Any(piece => PlainWords.Of(piece).Length < fewest)) return [];
        ImmutableArray<string>[] meant =
            [.. pieces.Select(piece => Offering.PlainSymptoms(matcher.Match(piece, turn.State.Series)))];
        bool areApart = meant.SelectMany(ids => ids).GroupBy(id => id, StringComparer.Ordinal)
            .All(same => same.Count() == 1);
        return areApart && meant.All(ids => !ids.IsEmpty) && meant.Any(ids => ids.Length == 1)
            ? [.. pieces.Zip(meant)
                .SelectMany(told => told.Second.Select(id => Telling.Item(turn, id, told.First, mannerOf)
                    with { Taken = told.Second.Length == 1 }))]
            : [];
    }

    // Where the whole has made one complaint, it is cut at a small word only into pieces that are complaints
    // themselves: "and the fan is loud".
    private ImmutableArray<string> Tellings(TurnDraft turn, string text)
    {
        const int fewest = 3;
        ImmutableArray<string> cut = whole.Cut(text);
        return cut.All(piece => piece.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length >= fewest
            && Offering.CertainSymptom(matcher.Match(piece, turn.State.Series)) is not null)
            ? cut
            : [.. Sentences(text)];
    }

    // The pieces that tell of one symptom for certain, the first of each symptom.
    private ImmutableArray<(string Piece, MatchResult Match)> Certain(TurnDraft turn, ImmutableArray<string> pieces) =>
    [
        .. pieces.Select(piece => (Piece: piece, Match: matcher.Match(piece, turn.State.Series)))
            .Where(heard => Offering.CertainSymptom(heard.Match) is not null)
            .DistinctBy(heard => Offering.CertainSymptom(heard.Match)),
    ];

    /// <summary>The sentences and clauses of a message; none where it is only one.</summary>
    public static string[] Sentences(string text) =>
        text.Split(['.', '!', '?', ';', ',', '\n'],
            StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) is { Length: > 1 } several
            ? several
            : [];

    /// <summary>Whether nothing is told yet.</summary>
    public static bool IsFirst(TurnDraft turn) =>
        turn.State is { Symptoms.IsEmpty: true, Code: null, Unconfirmed.IsEmpty: true }
        && turn.State.Question is null or { Kind: QuestionKind.Complaint };
}
