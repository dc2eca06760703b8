using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Search;

/// <summary>From free words to faults and symptoms. May be asked by many at once.</summary>
public sealed class Matcher(SearchIndex index, ISymptomCauses causes) : IMatcher
{
    private readonly OffTopicTalk offTopic = new(index);
    private readonly UnsafeRequests unsafeRequests = new(index);

    // Learning costs about as much as reading the pages: one matcher serves all who ask about the same library.
    private static readonly ConditionalWeakTable<Library, Matcher> Made = [];

    /// <summary>The matcher of a library, made at the first call.</summary>
    public static Matcher For(Library library) => Made.GetValue(library, Make);

    private static Matcher Make(Library library) =>
        new(KeptIndex.Shared.For(SearchEntries.From(library), SearchEntries.Glossary(library)), new LibraryCauses(library));

    /// <summary>Finds what a message is about. Never throws for anything that people type.</summary>
    /// <param name="seriesId">The series of the case, if known: codes mean something only within one.</param>
    public MatchResult Match(string text, string? seriesId = null)
    {
        var words = index.Words(text);
        var codes = CodeMentions.In(words);
        var tokens = index.Analyze(words);
        var reading = ClauseReader.Read(tokens);
        var whole = index.Ask(tokens);
        var said = reading.RuledOut.IsEmpty ? whole : index.Ask(WithSubject(reading));
        var faults = WithNoneOfThese(index.Find(said, NodeKind.Fault), whole, reading.RuledOut.IsEmpty);
        var best = faults.IsEmpty ? 0 : faults[0].Score;
        var symptoms = index.Find(said, NodeKind.Symptom);
        var bestOfTrade = symptoms.IsEmpty ? best : Math.Max(best, symptoms[0].Score);
        var intention = index.IntentionOf(whole);
        var request = new RequestWords(words, tokens, text.TrimEnd().EndsWith('?'));
        var heard = Heard(request, tokens, bestOfTrade, faults.Select(hit => hit.Probability).DefaultIfEmpty().Max());
        if (unsafeRequests.Page(request, whole, intention, heard) is { } unsafePage)
            return Refused(unsafePage, codes);
        if (VagueTalk.Is(words))
            return new MatchResult(MatchDecision.Clarify, [], [], null, codes, []);
        var shown = seriesId is null ? [] : codes.SelectMany(code => causes.SymptomsShownAs(seriesId, code)).ToImmutableArray();
        if (shown.IsEmpty && OffTopicTalk.IsOffTopic(said.Said, intention, heard))
            return codes.IsEmpty || heard.NamesAnotherMachine
                ? NothingRelevant(offTopic.Page(whole))
                : SeriesNeeded(codes);
        var denied = Denials.Of(reading, index);
        var message = new WholeMessage(
            index.FindPlain(whole, NodeKind.Fault), index.Holding(words, NodeKind.Fault).ToHashSet(StringComparer.Ordinal),
            denied.Where(mention => mention.Kind == NodeKind.Fault).Select(mention => mention.Id).ToHashSet(StringComparer.Ordinal),
            AfterTurn(words));
        var closest = shown.IsEmpty ? symptoms.Select(hit => hit.Score).FirstOrDefault() : 1;
        return Ranked((faults, closest), Symptoms(SymptomRanking.Rank(symptoms), shown), codes, denied, message);
    }

    private Dictionary<string, double>? AfterTurn(ImmutableArray<Word> words) =>
        Contrast.After(words) is { IsEmpty: false } after
            ? index.Find(index.Ask(index.Analyze(after)), NodeKind.Fault).ToDictionary(hit => hit.Entry.Id, hit => hit.Probability, StringComparer.Ordinal)
            : null;

    private Hearing Heard(RequestWords request, ImmutableArray<Token> tokens, double best, double sureness) => new(
        best, sureness, request.Count, index.SaysEnough(tokens), OffTopicTalk.NamesAnotherMachine(request, tokens),
        index.NamesPart(tokens), PlainQuestions.Is(request, tokens), index.KnownShare(tokens));

    private MatchResult Ranked((ImmutableArray<SearchHit> Faults, double ClosestSymptom) fits, ImmutableArray<MatchCandidate> symptoms,
        ImmutableArray<string> codes, ImmutableArray<DeniedMention> denied, WholeMessage whole)
    {
        var ranked = FaultRanking.Rank(fits.Faults, symptoms, causes, whole);
        var decision = Decide(ranked);
        if (decision == MatchDecision.Fault && ReadsAsSymptom(fits, ranked[0].Id))
            decision = MatchDecision.Choices;
        if (decision == MatchDecision.None && (codes.Length > 0 || denied.Length > 0))
            decision = MatchDecision.Clarify;
        return new MatchResult(decision, decision == MatchDecision.None ? [] : [.. ranked.Take(MatchThresholds.MostCandidates)],
            decision == MatchDecision.None ? [] : symptoms, null, codes, denied);
    }

    /// <summary>"windings are perfect but it won't spin": a complaint that names no part is about the one just named, which counts little.</summary>
    private ImmutableArray<Token> WithSubject(ClauseReading reading) =>
        index.NamesPart(reading.Complaint)
            ? reading.Complaint
            :
            [
                .. reading.Complaint,
                .. reading.RuledOut.SelectMany(mention => mention.Tokens).Where(token => !token.IsNegated && !States.IsWell(token.Term))
                    .Select(token => token with { Role = TokenRole.Aside }),
            ];

    /// <summary>"works fine now" rules everything out, and so tells of a trouble that comes and goes: there all words count.</summary>
    private ImmutableArray<SearchHit> WithNoneOfThese(ImmutableArray<SearchHit> faults, Question question, bool everythingCounts)
    {
        if (everythingCounts)
            return faults;
        var whole = index.Find(question, NodeKind.Fault).FirstOrDefault(hit => hit.Entry.Id == FaultId.NoneOfThese.Value);
        return whole is null || faults.Any(hit => hit.Entry == whole.Entry && hit.Score >= whole.Score)
            ? faults
            : [.. faults.Where(hit => hit.Entry != whole.Entry).Append(whole).OrderByDescending(hit => hit.Score)];
    }

    /// <summary>What reads more like a complaint than like its likeliest cause leaves the cause open.</summary>
    private static bool ReadsAsSymptom((ImmutableArray<SearchHit> Faults, double ClosestSymptom) fits, string likeliest) =>
        fits.ClosestSymptom * MatchThresholds.OverSymptom
            > fits.Faults.Where(hit => hit.Entry.Id == likeliest).Select(hit => hit.Score).DefaultIfEmpty().Max();

    private static MatchDecision Decide(ImmutableArray<MatchCandidate> ranked) => ranked switch
    {
        [] => MatchDecision.None,
        [var best, ..] when best.Score >= MatchThresholds.Certain => MatchDecision.Fault,
        [var best, ..] when best.Score >= MatchThresholds.WorthOffering => MatchDecision.Choices,
        _ => MatchDecision.Clarify,
    };

    private static ImmutableArray<MatchCandidate> Symptoms(ImmutableArray<SearchHit> symptoms, ImmutableArray<string> shown)
    {
        var found = symptoms
            .Where(hit => hit.Score >= MatchThresholds.FaintestSymptom && !shown.Contains(hit.Entry.Id))
            .Select(hit => new MatchCandidate(hit.Entry.Id, hit.Score));
        return [.. shown.Distinct().Order(StringComparer.Ordinal).Select(id => new MatchCandidate(id, 1)), .. found.Take(MatchThresholds.MostCandidates)];
    }

    private static MatchResult Refused(string? page, ImmutableArray<string> codes) =>
        new(MatchDecision.Refuse, [], [], page, codes, []);

    private static MatchResult NothingRelevant(string? page) => new(MatchDecision.None, [], [], page, [], []);

    /// <summary>Nothing but a code, and no series to read it by.</summary>
    private static MatchResult SeriesNeeded(ImmutableArray<string> codes) => new(MatchDecision.Clarify, [], [], null, codes, []);
}
