using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Answers what a person asks back: what a word means, how the step on hand is done, what is normal, how long it takes,
/// what it costs, whether it is dangerous.
/// </summary>
/// <remarks>Nothing happens to the case; the question that was open stays open.</remarks>
internal sealed class SideQuestions
{
    // A longer message tells something besides.
    private const int MostWords = 14;

    private readonly StepChooser _chooser;
    private readonly ImmutableArray<string> _what, _meaning, _how, _howLong, _cost, _danger, _normal;
    private readonly FrozenSet<string> _beside, _next, _sheet;
    private readonly FrozenDictionary<string, TermPage> _terms;

    public SideQuestions(Library library, StepChooser chooser)
    {
        _chooser = chooser;
        _what = PhraseLists.Beginnings(library.Phrases, "words-ask-what");
        _meaning = PhraseLists.Beginnings(library.Phrases, "words-ask-meaning");
        _how = PhraseLists.Beginnings(library.Phrases, "words-ask-how");
        _howLong = PhraseLists.Beginnings(library.Phrases, "words-ask-how-long");
        _cost = PhraseLists.Beginnings(library.Phrases, "words-ask-cost");
        _danger = PhraseLists.Beginnings(library.Phrases, "words-ask-danger");
        _normal = PhraseLists.Beginnings(library.Phrases, "words-ask-normal");
        _beside = PhraseLists.WordsOf(library.Phrases, "words-ask-beside").ToFrozenSet(StringComparer.Ordinal);
        _next = PhraseLists.Of(library.Phrases, "words-ask-next").ToFrozenSet(StringComparer.Ordinal);
        _sheet = PhraseLists.Of(library.Phrases, "words-ask-sheet").ToFrozenSet(StringComparer.Ordinal);
        _terms = library.Terms.Values.SelectMany(
            page => page.SaidAs.Select(said => (Words: PlainWords.Joined(said.Text), Page: page)))
            .DistinctBy(term => term.Words)
            .ToFrozenDictionary(term => term.Words, term => term.Page, StringComparer.Ordinal);
    }

    /// <returns>False when the words ask nothing of the kind.</returns>
    public bool Hear(TurnDraft turn, string text)
    {
        if (PlainWords.Of(text).Length > MostWords) return false;
        string said = PlainWords.Joined(text);
        if ((PhraseLists.After(_what, said) ?? PhraseLists.After(_how, said)) is { } thing
            && (_terms.GetValueOrDefault(thing) ?? _terms.GetValueOrDefault(Bare(thing))) is { } term)
            turn.Quote(SegmentKind.Notice, term.Meaning);
        else if (PhraseLists.After(_howLong, said) is { } time && Bare(time).Length == 0) SayHowLong(turn);
        else if (PhraseLists.After(_cost, said) is { } cost && Bare(cost).Length == 0)
            turn.Say(SegmentKind.Notice, "answer-cost");
        else if (PhraseLists.After(_normal, said) is { } value && IsAll(value, text)
            && turn.State.Question is { Kind: QuestionKind.Check, Fields.IsEmpty: false })
            turn.Say(SegmentKind.Notice, "answer-normal");
        else if (IsAtStep(turn) && _next.Contains(said)) turn.GoesOn = true;
        // A word that no page explains: the whole step is said again, and the words of it are no answer.
        else if (PhraseLists.After(_meaning, said) is { Length: > 0 }) turn.GoesOn = true;
        else if (IsAtStep(turn) && (PhraseLists.After(_how, said) ?? PhraseLists.After(_normal, said)) is { } way
            && IsAll(way, text))
            turn.GoesOn = true;
        else return false;
        return true;
    }

    /// <summary>Where the sheet of a closed case is, and where its unit is noted.</summary>
    public bool HearSheet(TurnDraft turn, string text)
    {
        if (turn.State.ClosedHow is null || !_sheet.Contains(PlainWords.Joined(text))) return false;
        turn.Say(SegmentKind.Notice, "answer-sheet");
        return true;
    }

    /// <summary>
    /// Answers what comes after a repair: its trial. "Next" said there leaves nothing out, since it may well mean that
    /// it is done.
    /// </summary>
    /// <returns>False when the words ask for nothing of the kind, or no repair is on hand.</returns>
    public bool HearNext(TurnDraft turn, string text)
    {
        if (turn.State.Question is not { Kind: QuestionKind.Repair, Subject: var id }
            || !_next.Contains(PlainWords.Joined(text))
            || turn.Library.Repairs.GetValueOrDefault(new RepairId(id)) is not { } repair) return false;
        turn.Say(SegmentKind.Notice, "answer-next", Slot.Of("repair", repair.Title), Slot.Of("verify", repair.Verify));
        return true;
    }

    /// <summary>
    /// Answers whether the step on hand is dangerous. It asks for nothing unsafe, whatever its words are like.
    /// </summary>
    /// <returns>False when that is not all the words ask, or when nothing at the step has a caution.</returns>
    public bool HearIsItDangerous(TurnDraft turn, string text)
    {
        if (!IsAtStep(turn) || PhraseLists.After(_danger, PlainWords.Joined(text)) is not { } rest
            || Bare(rest).Length > 0)
            return false;
        ImmutableArray<CautionPage> cautions = CautionsOf(turn);
        foreach (CautionPage caution in cautions)
        {
            turn.Quote(SegmentKind.Caution, caution.Danger);
            turn.Quote(SegmentKind.Caution, caution.Do);
        }

        if (!cautions.IsEmpty) turn.Say(SegmentKind.Notice, "answer-danger");
        return !cautions.IsEmpty;
    }

    private void SayHowLong(TurnDraft turn)
    {
        if (MinutesOf(turn) is { } own)
            turn.Say(SegmentKind.Notice, "answer-step-minutes", Slot.Figure("minutes", own));
        if (MinutesLeft(turn) is { } left)
            turn.Say(SegmentKind.Notice, "answer-minutes-on", Slot.Figure("minutes", left));
        else if (turn.State.Unverified is null) turn.Say(SegmentKind.Notice, "answer-how-long");
    }

    // An owner's way may end with somebody's visit, whose minutes are not the owner's.
    private double? MinutesLeft(TurnDraft turn) => turn.View.Role.Rank > 0 && turn.State.Unverified is null
        && !turn.State.Symptoms.IsEmpty && turn.State.ClosedHow is null && _chooser.MinutesOn(turn.State) is { } left
        ? Math.Ceiling(left)
        : null;

    private static double? MinutesOf(TurnDraft turn) => turn.State.Question switch
    {
        { Kind: QuestionKind.Check, Subject: var id } => turn.Library.Graph.Find(new CheckId(id))?.Minutes,
        { Kind: QuestionKind.Repair, Subject: var id } =>
            turn.Library.Graph.Find(new RepairId(id)) is { } repair ? repair.Minutes + repair.VerifyMinutes : null,
        { Kind: QuestionKind.Verify, Subject: var id } => turn.Library.Graph.Find(new RepairId(id))?.VerifyMinutes,
        _ => null,
    };

    // Those of the step, and of the state in which the unit stands.
    private static ImmutableArray<CautionPage> CautionsOf(TurnDraft turn)
    {
        ImmutableArray<CautionPage> own = turn.State.Question switch
        {
            { Kind: QuestionKind.Check, Subject: var id } =>
                turn.Library.Checks.GetValueOrDefault(new CheckId(id))?.Cautions ?? [],
            { Kind: QuestionKind.Repair or QuestionKind.Verify, Subject: var id } =>
                turn.Library.Repairs.GetValueOrDefault(new RepairId(id))?.Cautions ?? [],
            { Kind: QuestionKind.Access, Subject: var id } =>
                turn.Library.Access.GetValueOrDefault(new AccessId(id))?.Cautions ?? [],
            _ => [],
        };
        IEnumerable<CautionPage> ofState = turn.View.Access == turn.Library.Graph.Access.Start
            ? []
            : turn.Library.Access[turn.View.Access].Cautions;
        return [.. own.Concat(ofState).DistinctBy(caution => caution.Id)];
    }

    // "Where do I measure it" asks of the step alone; "where it should be 10 k it reads 2 k" tells something.
    private bool IsAll(string rest, string text) =>
        Bare(rest).Length == 0 || (text.TrimEnd().EndsWith('?') && !text.Any(char.IsDigit));

    private static bool IsAtStep(TurnDraft turn) =>
        turn.State.Question is { Kind: QuestionKind.Check or QuestionKind.Repair or QuestionKind.Access
            or QuestionKind.Verify };

    // What follows the beginning of such a question; null when the words begin otherwise.
    private string Bare(string words) => string.Join(' ', PlainWords.Of(words).Where(word => !_beside.Contains(word)));
}
