using System.Collections.Immutable;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Hears signs of danger in the middle of anything: what the pages say that people say who see one.</summary>
/// <remarks>The words of a wording stand in one clause in their order, few words between them, and nothing in the clause denies them but a word of their own: "tingles when I touch it".
/// Water and what is live are told in two clauses too: "there is a socket below, and the water goes right over it".</remarks>
internal sealed class DangerWords
{
    // So many other words may stand between those of a wording.
    private const int Between = 3;

    // A single word tells of danger only in a clause this short: "fire, help!", but not "fire up the compressor".
    private const int ShortClause = 2;

    private static readonly ImmutableHashSet<string> Small = ["a", "an", "the", "is", "its", "it", "are", "was", "there", "theres", "i", "im", "just", "please", "my", "me", "help", "oh", "god"];

    private static readonly string[] Denials = ["no", "not", "never", "without", "isnt", "doesnt", "dont", "didnt", "wasnt", "nothing", "neither"];

    private static readonly ImmutableHashSet<string> Harmless = ["detector", "detectors", "if", "when", "unless", "looks", .. Denials];

    // What keeps a clause from telling of water at something live.
    private static readonly ImmutableHashSet<string> Dry = ["dry", "cant", "wont", .. Denials];

    // So many words may stand between water and what is live.
    private const int BetweenWet = 10;

    private readonly LanguagePage? _language;
    private readonly ImmutableHashSet<string> _wet;
    private readonly ImmutableArray<ImmutableArray<string>> _live;
    private readonly DangerSign? _wetSign;
    private readonly Clauses _clauses;
    private readonly ImmutableArray<(ImmutableArray<string> Words, DangerSign Sign)> _wordings;

    public DangerWords(Library library)
    {
        _clauses = new Clauses(library);
        _language = library.Language is { IsMain: false } other ? other : null;
        _wet = [.. Listed(library, "words-wet")];
        _live = [.. Listed(library, "words-live").Select(PlainWords.Of)];
        _wetSign = library.Checks.Values.Where(page => !page.StopWet.IsEmpty).Select(page => new DangerSign(page, page.StopWet[0])).FirstOrDefault();
        _wordings =
        [
            .. from page in library.Checks.Values
               where !page.Stop.IsEmpty
               from outcome in page.Outcomes
               where page.Stop.Contains(outcome.Id)
               from said in outcome.SaidAs
               let words = Telling(said)
               where words.Length > 0
               orderby words.Length descending
               select (words, new DangerSign(page, outcome.Id)),
        ];
    }

    /// <summary>The sign of danger that a message tells of, gas before any other; null when it tells of none, or asks itself: "sparks? no".</summary>
    public DangerSign? Find(string text)
    {
        if (IsAnsweredNo(text)) return null;
        DangerSign[] signs = [.. _clauses.Cut(text).Select(FindIn).OfType<DangerSign>()];
        return signs.FirstOrDefault(sign => sign.IsGas) ?? signs.FirstOrDefault() ?? (IsWet(text) ? _wetSign : null);
    }

    private static IEnumerable<string> Listed(Library library, string phrase) => library.Phrases.Template(phrase).Split(',').Select(PlainWords.Joined).Where(words => words.Length > 0);

    /// <summary>The pieces of a message that tell of no danger.</summary>
    public ImmutableArray<string> Beside(string text)
    {
        bool isWet = IsWet(text);
        return [.. _clauses.Cut(text).Where(piece => FindIn(piece) is null && !(isWet && LiveIn(PlainWords.Of(piece)).Any()))];
    }

    // "Sparks? no"; but not "there is smoke coming out, is that normal? no".
    private static bool IsAnsweredNo(string text)
    {
        const int few = 3;
        return text.Split('?') is [var asked, var answer] && PlainWords.Of(asked).Length <= few && PlainWords.Of(answer) is ["no" or "nope" or "nah"];
    }

    // Whether a message tells of water, and of something live not far from it; what a clause denies tells of neither.
    private bool IsWet(string text)
    {
        ImmutableArray<string> said = [.. _clauses.Cut(text).Select(PlainWords.Of).Where(clause => !clause.Any(IsDenying)).SelectMany(clause => clause)];
        return LiveIn(said).Any(live => Enumerable.Range(0, said.Length).Any(at => _wet.Contains(said[at]) && Math.Abs(at - live) <= BetweenWet));
    }

    private bool IsDenying(string word) => Dry.Contains(word) || _language?.Not.Contains(word) == true;

    // Where something live is named.
    private IEnumerable<int> LiveIn(ImmutableArray<string> said) =>
        Enumerable.Range(0, said.Length).Where(at => _live.Any(words => at + words.Length <= said.Length && said.AsSpan(at, words.Length).SequenceEqual(words.AsSpan())));

    private DangerSign? FindIn(string clause)
    {
        ImmutableArray<string> said = Telling(clause);
        ImmutableArray<string> denying = [.. said.Where(IsDenied)];
        foreach ((ImmutableArray<string> words, DangerSign sign) in _wordings)
            if (denying.All(words.Contains) && (words.Length > 1 || said.Length <= ShortClause) && Holds(said, words)) return sign;
        return null;
    }

    private bool IsDenied(string word) => Harmless.Contains(word) || _language?.Not.Contains(word) == true;

    private ImmutableArray<string> Telling(string text) => _language is null
        ? [.. PlainWords.Of(text).Where(word => !Small.Contains(word))]
        : [.. PlainWords.Of(text).Where(word => _language.Not.Contains(word) || !_language.SmallWords.Contains(word))];

    private static bool Holds(ImmutableArray<string> said, ImmutableArray<string> words)
    {
        for (int first = 0; first < said.Length; first++)
            if (said[first] == words[0] && GoesOn(said, first, words)) return true;
        return false;
    }

    private static bool GoesOn(ImmutableArray<string> said, int first, ImmutableArray<string> words)
    {
        int at = first;
        for (int place = 1; place < words.Length; place++)
        {
            at = at + 1 < said.Length ? said.IndexOf(words[place], at + 1) : -1;
            if (at < 0 || at - first > place + Between) return false;
        }

        return true;
    }
}
