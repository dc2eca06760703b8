using System.Collections.Immutable;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Finds wordings in what people say about danger.</summary>
/// <remarks>
/// The words of a wording stand in one clause in their order, few words between them, and nothing in the clause denies
/// them but a word of their own: "tingles when I touch it".
/// </remarks>
internal sealed class UrgentWordings<T>
    where T : class
{
    // So many other words may stand between those of a wording.
    private const int Between = 3;

    // A single word tells of danger only in a clause this short: "fire, help!", but not "fire up the compressor"; "yes,
    // a bit of" counts for nothing.
    private const int ShortClause = 2;

    private static readonly ImmutableHashSet<string> Small = ["a", "an", "the", "is", "its", "it", "are", "was",
        "there", "theres", "i", "im", "just", "please", "my", "me", "help", "oh", "god"];

    private static readonly ImmutableHashSet<string> Harmless =
        ["detector", "detectors", "looks", .. UrgentDenials.All];

    // Before a wording they make it something that may be; behind it they only tell the moment: "got a shock when she
    // touched it".
    private static readonly ImmutableHashSet<string> Conditions = ["if", "when", "unless"];

    private readonly LanguagePage? _language;
    private readonly ImmutableHashSet<string> _yes, _beside;
    private readonly ImmutableArray<(ImmutableArray<string> Words, T Means)> _wordings;

    /// <param name="wordings">
    /// What people say, and what it tells of; where several are found, the longest counts.
    /// </param>
    public UrgentWordings(Library library, IEnumerable<(string Said, T Means)> wordings)
    {
        _language = library.Language is { IsMain: false } other ? other : null;
        _yes = [.. PhraseLists.Of(library.Phrases, "words-plain-yes").Where(entry => !entry.Contains(' '))];
        _beside = [.. _yes, .. PhraseLists.Of(library.Phrases, "words-beside-sign")];
        _wordings = [.. wordings.Select(it => (Words: Telling(it.Said), it.Means)).Where(it => it.Words.Length > 0)
            .OrderByDescending(it => it.Words.Length)];
    }

    /// <summary>What a clause tells of; null when it tells of nothing of the kind.</summary>
    public T? Find(string clause) => FindAll(clause).FirstOrDefault();

    /// <summary>All that a clause tells of, the longest wording first.</summary>
    public IEnumerable<T> FindAll(string clause)
    {
        ImmutableArray<string> said = Telling(clause);
        ImmutableArray<string> denying = [.. said[AfterYes(said)..].Where(IsDenied)];
        return from wording in _wordings
               where denying.All(wording.Words.Contains)
                   && (wording.Words.Length > 1 || said.Count(word => !_beside.Contains(word)) <= ShortClause)
                   && FirstOf(said, wording.Words) is { } first && !said[..first].Any(Conditions.Contains)
               select wording.Means;
    }

    // "No wait, yes there is smoke": what was denied before the last yes is not.
    private int AfterYes(ImmutableArray<string> said) =>
        said.Select((word, at) => _yes.Contains(word) ? at + 1 : 0).DefaultIfEmpty().Max();

    private bool IsDenied(string word) => Harmless.Contains(word) || _language?.Not.Contains(word) == true;

    private ImmutableArray<string> Telling(string text) => _language is null
        ? [.. PlainWords.Of(text).Where(word => !Small.Contains(word))]
        : [.. PlainWords.Of(text).Where(word => _language.Not.Contains(word) || !_language.SmallWords.Contains(word))];

    // Where a wording begins.
    private static int? FirstOf(ImmutableArray<string> said, ImmutableArray<string> words)
    {
        for (int first = 0; first < said.Length; first++)
            if (said[first] == words[0] && GoesOn(said, first, words)) return first;
        return null;
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
