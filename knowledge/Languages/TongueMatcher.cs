using System.Collections.Immutable;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;

namespace DxAssistant.Knowledge.Languages;

/// <summary>Finds what a message means in a language other than the main one, by the wordings of its pages.</summary>
/// <remarks>Unsafe requests come first; they are looked for word by word, so that a long message hides none.</remarks>
public sealed class TongueMatcher : IMatcher
{
    private const int Most = 5;

    // Set by judgement, not fitted to labelled messages; the language tests say which wordings they must find.
    private const double Faintest = 0.3;
    private const double Clear = 0.6;
    private const double Lead = 0.12;

    private readonly TongueTerms terms;
    private readonly TongueIndex symptoms;
    private readonly TongueIndex faults;
    private readonly TongueRequests refusals;
    private readonly TongueRequests offTopic;
    private readonly LibraryCauses causes;

    public TongueMatcher(Library library)
    {
        terms = new TongueTerms(library.Language!, library.Glossary);
        string tag = library.Language!.Id;
        symptoms = new TongueIndex(terms,
            library.Symptoms.Values.Select(page => (page.Id.Value, In(tag, [page.Title, .. page.SaidAs]))));
        faults = new TongueIndex(terms,
            library.Faults.Values.Select(page => (page.Id.Value, In(tag, [page.Title, .. page.SaidAs]))));
        refusals = new TongueRequests(terms, library.Refusals.Values.Where(page => page.Unsafe)
            .Select(page => (page.Id, In(tag, page.SaidAs))));
        offTopic = new TongueRequests(terms, library.Refusals.Values.Where(page => !page.Unsafe)
            .Select(page => (page.Id, In(tag, page.SaidAs))));
        causes = new LibraryCauses(library);
    }

    public MatchResult Match(string text, string? seriesId = null)
    {
        if (refusals.Find(text) is { } unsafePage) return Nothing(MatchDecision.Refuse, unsafePage);
        ImmutableArray<string> said = terms.Of(text);
        ImmutableArray<MatchCandidate> shown = symptoms.Find(said);
        ImmutableArray<MatchCandidate> named = faults.Find(said);
        double best = Math.Max(Score(shown), Score(named));
        if (best < Faintest) return Nothing(MatchDecision.None, offTopic.Find(text));
        MatchDecision decision = Score(named) >= Clear && Score(named) > Score(shown)
            && (named.Length == 1 || named[0].Score - named[1].Score >= Lead)
            ? MatchDecision.Fault
            : MatchDecision.Choices;
        return new MatchResult(decision, Candidates(named, shown), shown, null, [], []);
    }

    private ImmutableArray<MatchCandidate> Candidates(ImmutableArray<MatchCandidate> named,
        ImmutableArray<MatchCandidate> shown) =>
        !named.IsEmpty || shown.IsEmpty ? [.. named.Take(Most)] :
        [
            .. causes.CausesOf(shown[0].Id).OrderByDescending(cause => cause.Probability)
                .ThenBy(cause => cause.FaultId, StringComparer.Ordinal)
                .Select(cause => new MatchCandidate(cause.FaultId, shown[0].Score * cause.Probability)).Take(Most),
        ];

    private static double Score(ImmutableArray<MatchCandidate> found) => found.IsEmpty ? 0 : found[0].Score;

    private static IEnumerable<string> In(string tag, IEnumerable<Passage> passages) =>
        passages.Where(passage => passage.Place.Language == tag).Select(passage => passage.Text);

    private static MatchResult Nothing(MatchDecision decision, string? page) => new(decision, [], [], page, [], []);
}
