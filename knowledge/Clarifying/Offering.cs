using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Clarifying;

/// <summary>Which symptoms a message may mean, and the question that tells them apart.</summary>
public static class Offering
{
    // A symptom is taken without asking back when it fits this well and no other comes near; both are of the matcher's
    // scale.
    private const double Certain = 0.65;
    private const double Lead = 0.15;

    // Below this share of the best fit a symptom is not worth a question.
    private const double WorthOffering = 0.4;

    // A symptom that only a fault leads to is less likely meant than one whose words were said; common practice, no
    // source.
    private const double Unsaid = 0.5;

    private const int MostFaults = 5;

    /// <summary>The symptom that words mean beyond doubt; null when there is none.</summary>
    public static string? CertainSymptom(MatchResult match) => match.Symptoms switch
    {
        [{ Score: >= Certain } only] => only.Id,
        [{ Score: >= Certain } first, var second, ..] when first.Score - second.Score >= Lead => first.Id,
        _ => null,
    };

    /// <summary>
    /// The symptoms one of which words mean beyond doubt: the one, or the few that fit nearly as well; empty when none
    /// fits well.
    /// </summary>
    public static ImmutableArray<string> PlainSymptoms(MatchResult match) => CertainSymptom(match) is { } only ? [only]
        : match.Symptoms is [{ Score: >= Certain } first, ..]
        ? [.. match.Symptoms.Where(hit => first.Score - hit.Score < Lead).Select(hit => hit.Id)]
        : [];

    /// <summary>The symptoms the words come near to; when they name a fault instead, the symptoms it shows.</summary>
    public static ImmutableArray<SymptomPage> Symptoms(Library library, MatchResult match)
    {
        ImmutableArray<SymptomPage> near = [.. match.Symptoms
            .Where(hit => hit.Score >= WorthOffering * match.Symptoms[0].Score)
            .Select(hit => library.Symptoms[new SymptomId(hit.Id)])];
        bool named = match.Decision == MatchDecision.Fault;
        IEnumerable<SymptomPage> shown = named || near.IsEmpty
            ? match.Candidates.Take(named ? 1 : MostFaults)
                .SelectMany(candidate => ShownBy(library, new FaultId(candidate.Id)))
            : [];
        return [.. near.Concat(shown).Distinct()];
    }

    /// <summary>
    /// The question to ask when nothing was said but that something is wrong: the one that tells most of its own
    /// symptoms apart; null when there is none.
    /// </summary>
    public static Clarification? General(Library library) =>
        library.Questions.Values.Select(page => new Clarifier([page]).MostTelling(ToldBy(library, page)))
            .OfType<Clarification>()
            .OrderByDescending(asked => asked.Bits).ThenBy(asked => asked.Question.Id, StringComparer.Ordinal)
            .FirstOrDefault();

    private static ImmutableArray<Candidate> ToldBy(Library library, QuestionPage page) =>
    [
        .. page.Told.Select(told => told.Symptom).Distinct().Select(id => library.Symptoms.GetValueOrDefault(id))
            .OfType<SymptomPage>()
            .Select(symptom => new Candidate(symptom, 1)),
    ];

    /// <summary>The question that tells the symptoms apart; null when a list of them is read sooner.</summary>
    public static Clarification? Question(Library library, MatchResult match, ImmutableArray<SymptomPage> symptoms)
    {
        double least = match.Symptoms.IsEmpty ? 1 : match.Symptoms[^1].Score;
        return new Clarifier(library.Questions.Values).Best([.. symptoms.Select(page =>
            new Candidate(page, match.Symptoms.FirstOrDefault(hit => hit.Id == page.Id.Value)?.Score
                ?? (Unsaid * least)))]);
    }

    private static IEnumerable<SymptomPage> ShownBy(Library library, FaultId fault) =>
        library.Graph.SymptomsOf(fault)
            .OrderByDescending(symptom => symptom.Causes[fault]).ThenBy(symptom => symptom.Id)
            .Select(symptom => library.Symptoms[symptom.Id]);
}
