using System.Buffers;
using System.Collections.Immutable;
using DxAssistant.Conversation.Told;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>Takes a message as a whole: each piece of it by what the pages say that people say.</summary>
/// <remarks>
/// Only what a piece says beyond doubt becomes an item; the rest is left to the search or said to be unclear. What is
/// made of all pages is made when it is first needed: taps need none of it.
/// </remarks>
internal sealed class WholeReader
{
    private const string Stopping = ",.;:!?\n";

    private static readonly SearchValues<char> Stops = SearchValues.Create(Stopping);

    private const string Owner = "owner";

    private static readonly ImmutableHashSet<string> Present = ["here", "speaking"];

    private static readonly ImmutableHashSet<string> Myself = ["im", "i"];

    // So many words before a person, the first of theirs included, tell whether somebody is only spoken of.
    private const int Near = 4;

    private static readonly ImmutableHashSet<string> NoPerson = ["a", "an", "the", "my", "your", "our", "for", "by",
        "from", "call", "called", "need", "send", "get", "want", "see", "ask", "asked", "told", "no", "not", "any",
        "us", "me", "last", "previous", "other", "another", "until", "before", "without"];

    // "We already had a technician": somebody who was there, and is no longer.
    private static readonly ImmutableHashSet<string> Past =
        ["had", "looked", "been", "was", "were", "they", "last", "yesterday", "ago", "already", "earlier"];

    private static readonly ImmutableHashSet<string> Subjects =
        ["the", "it", "its", "they", "theyre", "that", "this", "my", "both", "all"];

    private readonly Clauses _clauses;
    private readonly WordLists _lists;
    private readonly WalkSettings _settings;
    private readonly DangerWords _danger;
    private readonly SentenceDoubt _doubt;
    private readonly ImmutableHashSet<ToldThing> _signs;
    private readonly Lazy<(Wordings Wordings, PartNames Parts)> _made;

    public WholeReader(Library library, DangerWords danger)
    {
        _clauses = new Clauses(library);
        _danger = danger;
        _doubt = new SentenceDoubt(library, _clauses);
        _signs = [.. library.Checks.Values.SelectMany(page => page.Stop
            .Select(sign => new ToldThing.Outcome(page.Id.Value, sign.Value, false)))];
        _lists = new WordLists(library.Phrases);
        _settings = library.Settings;
        _made = new(() => (new Wordings(library, _lists), new PartNames(library, _lists)));
    }

    private Wordings Wordings => _made.Value.Wordings;

    /// <summary>Makes what is made of all pages, so that the first message need not wait.</summary>
    public void GetReady() => _ = _made.Value;

    /// <summary>The pieces of a message.</summary>
    public ImmutableArray<string> Cut(string text) => _clauses.Cut(text);

    /// <summary>The role that words name, and nothing else; null when they name none or say more.</summary>
    public string? RoleIn(string text)
    {
        ImmutableArray<string> words = _lists.Read(text);
        return !IsPast(text) && Wordings.Find(words.AsSpan()) is [ToldThing.AtUnit person] ? person.Role : null;
    }

    /// <summary>How surely something is said: with doubt, and as something that comes and goes.</summary>
    public (bool Doubtful, bool ComesAndGoes) MannerOf(string text)
    {
        ImmutableArray<string> words = _lists.Read(text);
        return (words.Contains(WordLists.Doubt), words.Contains(WordLists.Sometimes));
    }

    /// <summary>The same for each piece of a message, where a doubt may be of all that its sentence tells.</summary>
    public Func<string, (bool Doubtful, bool ComesAndGoes)> MannerIn(string text)
    {
        ImmutableHashSet<string> doubted = Doubted(text);
        return piece =>
        {
            (bool isDoubtful, bool comesAndGoes) = MannerOf(piece);
            return (isDoubtful || doubted.Contains(piece) || Cut(piece).Any(doubted.Contains), comesAndGoes);
        };
    }

    private ImmutableHashSet<string> Doubted(string text) =>
        [.. _doubt.Pieces(text).SelectMany(piece => (string[])[piece, WithoutNo(piece)])];

    public WholeMessage Read(TurnDraft turn, string text)
    {
        var found = new Findings();
        if (SeriesNames.Find(turn.Library, text) is { } unit && unit.Id != turn.State.Series)
            found.Add(new ToldThing.Unit(unit.Id), unit.Title.Text);
        SeriesPage? series = SeriesNames.Find(turn.Library, text) ?? turn.View.Series;
        // "it was E5 but now it's b4": only the whole of it says which code is meant.
        if (ToldCodes.Only(turn, series, text) is { } code)
        {
            found.Add(code, text);
            return found.AsMessage();
        }

        string rest = turn.State.Role is null ? TakeRole(text, found) : text;
        ImmutableArray<string> pieces = LampPieces.Joined([.. Cut(rest).Select(WithoutNo)]);
        ImmutableHashSet<string> doubted = Doubted(rest);
        bool afterReplaced = false;
        var used = new HashSet<int>();
        for (int at = 0; at < pieces.Length; at++)
        {
            if (used.Contains(at)) continue;
            found.IsDoubted = doubted.Contains(pieces[at]) || MannerOf(pieces[at]).Doubtful;
            int taken = MeasuredPieces.Take(turn, Wordings, _lists, series, pieces, at, used, found);
            if (taken > 0)
            {
                at += taken - 1;
                continue;
            }

            string piece = ToldCodes.Take(turn, series, pieces[at], found);
            Clause clause = Clause.Read(piece, _lists, Wordings) with { Doubtful = found.IsDoubted };
            Take(clause, afterReplaced, found);
            afterReplaced = clause.Words.Contains(WordLists.Replaced);
        }

        return found.AsMessage();
    }

    // "brenholt e5 flashing tech here", "88 flashing I'm the tech": who it is, without a comma, as dictation writes it;
    // not "I need a tech here".
    private string TakeRole(string text, Findings found)
    {
        const int most = 8;
        ImmutableArray<(string Word, int End)> words = PlainWords.Placed(text);
        // What a comma sets apart is a piece of its own: "b4 brenholt, licensed tech here".
        if (RoleIn(text[(text.AsSpan().TrimEnd(Stopping).LastIndexOfAny(Stops) + 1)..]) is not null) return text;
        for (int count = Math.Min(most, words.Length - 1); count >= 1; count--)
        {
            if (EndsIn(text, words, count) is { } last)
            {
                int from = words[^(count + 1)].End;
                found.Add(new ToldThing.AtUnit(last), text[from..].Trim());
                return text[..from];
            }
        }

        return text;
    }

    // The role that the last words of a message name, of somebody who is there.
    private string? EndsIn(string text, ImmutableArray<(string Word, int End)> words, int count)
    {
        int from = words[^(count + 1)].End;
        bool isSaid = Present.Contains(words[^1].Word) || Myself.Contains(words[^count].Word);
        return isSaid && text.AsSpan(from).TrimEnd().IndexOfAny(Stops) < 0 && !words[..^(count - 1)].TakeLast(Near)
            .Any(word => NoPerson.Contains(word.Word)) ? RoleIn(text[from..]) : null;
    }

    private static bool IsPast(string text) => PlainWords.Of(text).Any(Past.Contains);

    // "No, the filters are clean" contradicts what was asked or said; it does not deny that they are clean.
    private static string WithoutNo(string piece) => PlainWords.Placed(piece) is [("no", var end), (var next, _), _, ..]
        && Subjects.Contains(next) ? piece[end..] : piece;

    private void Take(Clause clause, bool afterReplaced, Findings found)
    {
        if (clause.Words.IsEmpty || (clause.TellsOfAPart(afterReplaced) && TakesPart(clause, found))) return;
        foreach (Tile tile in clause.Tiles) Take(clause, tile, found);
        if (!clause.IsCovered) found.Leave(clause.Text);
    }

    private void Take(Clause clause, Tile tile, Findings found)
    {
        bool bounded = clause.IsBounded(tile);
        if (tile.Means is not [var thing]) Leave(clause, tile, found);
        else switch (thing)
        {
            case ToldThing.Unit: break;
            case ToldThing.Mode when !clause.Words.Contains("not"): found.Add(thing, clause.Text); break;
            case ToldThing.Symptom symptom when bounded: found.Add(symptom
                with { Confidence = Doubts.ConfidenceOf(clause.Doubtful, _settings),
                    ComesAndGoes = clause.ComesAndGoes }, clause.Text); break;
            // "The water alarm is going off" holds words for a gas alarm, and is none.
            case ToldThing.Outcome sign when _signs.Contains(sign) && _danger.Find(clause.Text) is null: found.Leave(
                clause.Text); break;
            case ToldThing.Outcome outcome when bounded: found.Add(outcome
                with { Doubtful = clause.Doubtful || clause.ComesAndGoes }, clause.Text); break;
            // "I am not a tech"; where a page says so of an owner, the owner is told.
            case ToldThing.AtUnit { Role: not Owner } when clause.Words.Contains("not"): found.Unclear(
                clause.Text); break;
            case ToldThing.AtUnit when clause.Doubtful || IsPast(clause.Text): found.Unclear(clause.Text); break;
            case ToldThing.AtUnit or ToldThing.Tried when bounded
                && !clause.Doubtful: found.Add(thing, clause.Text); break;
            case ToldThing.Outcome or ToldThing.Tried: found.Unclear(clause.Text); break;
        }
    }

    // Words that two pages claim: of a complaint the search may make more.
    private static void Leave(Clause clause, Tile tile, Findings found)
    {
        if (tile.Means.Any(thing => thing is ToldThing.Symptom)) found.Leave(clause.Text);
        else if (clause.IsBounded(tile)) found.Unclear(clause.Text);
    }

    // A part that was changed, told by a name of it, or by a word that several parts share.
    private bool TakesPart(Clause clause, Findings found)
    {
        bool said = clause.Words.Contains(WordLists.Replaced);
        if (clause.Doubtful) found.Unclear(clause.Text);
        else if (_made.Value.Parts.Named(clause.Words) is { } repair)
            found.Add(new ToldThing.Tried(repair), clause.Text);
        else if (_made.Value.Parts.Like(clause.Words) is { IsEmpty: false } like) found.AddOneOf(like, clause.Text);
        else if (said) found.Unclear(clause.Text);
        else return false;
        return true;
    }
}
