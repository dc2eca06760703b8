using System.Collections.Immutable;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Hears signs of danger in the middle of anything: what the pages say that people say who see one.</summary>
/// <remarks>
/// Water and what is live are told in two clauses too: "there is a socket below, and the water goes right over it".
/// </remarks>
internal sealed class DangerWords
{
    // What keeps a clause from telling of water at something live.
    private static readonly ImmutableHashSet<string> Dry = ["dry", "cant", "wont", .. UrgentDenials.All];

    // So many words may stand between water and what is live.
    private const int BetweenWet = 10;

    private readonly LanguagePage? _language;
    private readonly ImmutableArray<string[]> _otherAlarms, _beepingAlarms, _noFire;
    private readonly ImmutableHashSet<string> _beforeAlarm, _beeps, _wet;
    private readonly ImmutableArray<ImmutableArray<string>> _live;
    private readonly DangerSign? _wetSign;
    private readonly Clauses _clauses;
    private readonly UrgentWordings<DangerSign> _wordings;

    public DangerWords(Library library)
    {
        _clauses = new Clauses(library);
        _language = library.Language is { IsMain: false } other ? other : null;
        _wet = [.. PhraseLists.Of(library.Phrases, "words-wet")];
        _live = [.. PhraseLists.Of(library.Phrases, "words-live").Select(PlainWords.Of)];
        _otherAlarms = PhraseLists.Runs(library.Phrases, "words-other-alarm");
        _beepingAlarms = PhraseLists.Runs(library.Phrases, "words-beeping-alarm");
        _beeps = [.. PhraseLists.Of(library.Phrases, "words-beeps")];
        _noFire = PhraseLists.Runs(library.Phrases, "words-no-fire");
        _beforeAlarm = [.. PhraseLists.Of(library.Phrases, "words-before-alarm")];
        _wetSign = library.Checks.Values.Where(page => !page.StopWet.IsEmpty)
            .Select(page => new DangerSign(page, page.StopWet[0])).FirstOrDefault();
        _wordings = new UrgentWordings<DangerSign>(library,
            from page in library.Checks.Values
            where !page.Stop.IsEmpty
            from outcome in page.Outcomes
            where page.Stop.Contains(outcome.Id)
            from said in outcome.SaidAs
            select (said, new DangerSign(page, outcome.Id)));
    }

    /// <summary>
    /// The sign of danger that a message tells of, the most urgent of several; null when it tells of none, or asks
    /// itself: "sparks? no".
    /// </summary>
    public DangerSign? Find(string text) => FindAll(text).FirstOrDefault();

    /// <summary>All signs of danger that a message tells of, the most urgent first.</summary>
    public ImmutableArray<DangerSign> FindAll(string text)
    {
        if (IsAnsweredNo(text)) return [];
        DangerSign[] signs = [.. _clauses.Cut(text).Select(WithoutHarmless).SelectMany(_wordings.FindAll)];
        return [.. (IsWet(text) && _wetSign is { } wet ? signs.Append(wet) : signs).Distinct()
            .OrderBy(sign => sign.Kind)];
    }

    /// <summary>The pieces of a message that tell of no danger.</summary>
    public ImmutableArray<string> Beside(string text)
    {
        bool isWet = IsWet(text);
        return [.. _clauses.Cut(text)
            .Where(piece => _wordings.Find(WithoutHarmless(piece)) is null
                && !(isWet && LiveIn(PlainWords.Of(piece)).Any()))];
    }

    // "Sparks? no"; but not "there is smoke coming out, is that normal? no".
    private static bool IsAnsweredNo(string text)
    {
        const int few = 3;
        return text.Split('?') is [var asked, var answer] && PlainWords.Of(asked).Length <= few
            && PlainWords.Of(answer) is ["no" or "nope" or "nah"];
    }

    // "The condensate pump alarm is beeping": what sounds for water, tells of no gas; "the heat pump alarm" may. A
    // "pump alarm" is that of a condensate pump where it beeps: the alarm that "goes off" may be that of the heat pump.
    // "Fire it up" starts the unit.
    private string WithoutHarmless(string clause)
    {
        string calm = Without(_otherAlarms, clause, IsNamedSo);
        if (PlainWords.Of(clause).Any(_beeps.Contains)) calm = Without(_beepingAlarms, calm, IsNamedSo);
        return Without(_noFire, calm, (_, _) => true);
    }

    private bool IsNamedSo(ImmutableArray<string> said, int at) => at == 0 || _beforeAlarm.Contains(said[at - 1]);

    private static string Without(ImmutableArray<string[]> runs, string clause,
        Func<ImmutableArray<string>, int, bool> mayStand)
    {
        ImmutableArray<string> all = PlainWords.Of(clause), left = all;
        foreach (string[] run in runs)
            for (int at = 0; at + run.Length <= left.Length; at++)
                if (left.AsSpan(at, run.Length).SequenceEqual(run) && mayStand(left, at))
                    left = left.RemoveRange(at, run.Length);
        return left.Length < all.Length ? string.Join(' ', left) : clause;
    }

    // Whether a message tells of water, and of something live not far from it; what a clause denies tells of neither.
    private bool IsWet(string text)
    {
        ImmutableArray<string> said = [.. _clauses.Cut(text).Select(PlainWords.Of)
            .Where(clause => !clause.Any(IsDenying)).SelectMany(clause => clause)];
        return LiveIn(said)
            .Any(live => Enumerable.Range(0, said.Length)
                .Any(at => _wet.Contains(said[at]) && Math.Abs(at - live) <= BetweenWet));
    }

    private bool IsDenying(string word) => Dry.Contains(word) || _language?.Not.Contains(word) == true;

    // Where something live is named.
    private IEnumerable<int> LiveIn(ImmutableArray<string> said) =>
        Enumerable.Range(0, said.Length)
            .Where(at => _live.Any(words => at + words.Length <= said.Length
                && said.AsSpan(at, words.Length).SequenceEqual(words.AsSpan())));
}
