using System.Collections.Immutable;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Search;

/// <summary>From free words to faults and symptoms. May be asked by many at once.</summary>
public sealed class Matcher(SearchIndex index, ISymptomCauses causes)
{
    private readonly OffTopicTalk offTopic = new(index);
    private readonly UnsafeRequests unsafeRequests = new(index);

    /// <summary>Makes a matcher for a library. Costs about as much as reading its pages: keep it.</summary>
    public static Matcher For(Library library) =>
        new(SearchIndex.Build(SearchEntries.From(library), SearchEntries.Glossary(library)), new LibraryCauses(library));

    /// <summary>Finds what a message is about. Never throws for anything that people type.</summary>
    /// <param name="seriesId">The series of the case, if known: codes mean something only within one.</param>
    public MatchResult Match(string text, string? seriesId = null)
    {
        var words = index.Words(text);
        var codes = CodeMentions.In(words);
        var tokens = index.Analyze(words);
        var reading = ClauseReader.Read(tokens);
        var said = TermBag.Of(reading.Complaint);
        var faults = index.Find(said, NodeKind.Fault);
        var best = faults.IsEmpty ? 0 : faults[0].Score;
        if (unsafeRequests.Page(words, tokens, best) is { } unsafePage)
            return Refused(unsafePage, codes);
        var shown = seriesId is null ? [] : codes.SelectMany(code => causes.SymptomsShownAs(seriesId, code)).ToImmutableArray();
        if (shown.IsEmpty && offTopic.IsOffTopic(words, tokens, said, best))
            return NothingRelevant(offTopic.Page(tokens), codes);
        var denied = Denials.Of(reading.RuledOut, index);
        return Ranked(faults, Symptoms(said, shown), codes, denied);
    }

    private MatchResult Ranked(ImmutableArray<SearchHit> faults, ImmutableArray<MatchCandidate> symptoms,
        ImmutableArray<string> codes, ImmutableArray<DeniedMention> denied)
    {
        var ruledOut = denied.Where(mention => mention.Kind == NodeKind.Fault).Select(mention => mention.Id).ToHashSet(StringComparer.Ordinal);
        var ranked = FaultRanking.Rank(faults, symptoms, causes, ruledOut);
        var decision = Decide(ranked, symptoms);
        if (decision == MatchDecision.None && (codes.Length > 0 || denied.Length > 0))
            decision = MatchDecision.Clarify;
        return new MatchResult(decision, decision == MatchDecision.None ? [] : [.. ranked.Take(MatchThresholds.MostCandidates)],
            decision == MatchDecision.None ? [] : symptoms, null, codes, denied);
    }

    private static MatchDecision Decide(ImmutableArray<MatchCandidate> ranked, ImmutableArray<MatchCandidate> symptoms)
    {
        if (ranked.IsEmpty || ranked[0].Score < MatchThresholds.Faintest)
            return MatchDecision.None;
        if (ranked[0].Score < MatchThresholds.WorthOffering && (symptoms.IsEmpty || symptoms[0].Score < MatchThresholds.WorthOffering))
            return MatchDecision.Clarify;
        var next = ranked.Length > 1 ? ranked[1].Score : 0;
        return ranked[0].Score >= MatchThresholds.Certain && next <= ranked[0].Score * (1 - MatchThresholds.Lead)
            ? MatchDecision.Fault
            : MatchDecision.Choices;
    }

    private ImmutableArray<MatchCandidate> Symptoms(TermBag said, ImmutableArray<string> shown)
    {
        var found = index.Find(said, NodeKind.Symptom)
            .Where(hit => hit.Score >= MatchThresholds.FaintestSymptom && !shown.Contains(hit.Entry.Id))
            .Select(hit => new MatchCandidate(hit.Entry.Id, hit.Score));
        return [.. shown.Distinct().Order(StringComparer.Ordinal).Select(id => new MatchCandidate(id, 1)), .. found.Take(MatchThresholds.MostCandidates)];
    }

    private static MatchResult Refused(string? page, ImmutableArray<string> codes) =>
        new(MatchDecision.Refuse, [], [], page, codes, []);

    private static MatchResult NothingRelevant(string? page, ImmutableArray<string> codes) =>
        new(MatchDecision.None, [], [], page, codes, []);
}
