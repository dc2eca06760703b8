using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Search.Clauses;
using DxAssistant.Knowledge.Search.Gates;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

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

    private static Matcher Make(Library library) => Steps(library).Last()!;

    /// <summary>Makes the matcher of a library in short steps, for a place where other work waits meanwhile.</summary>
    /// <returns>Null until the last step, which gives the matcher.</returns>
    public static IEnumerable<Matcher?> Steps(Library library)
    {
        foreach (var index in KeptIndex.Shared.Steps(SearchEntries.From(library), SearchEntries.Glossary(library)))
            yield return index is null ? null : new Matcher(index, new LibraryCauses(library));
    }

    /// <summary>Finds what a message is about. Never throws for anything that people type.</summary>
    /// <param name="seriesId">The series of the case, if known: codes mean something only within one.</param>
    public MatchResult Match(string text, string? seriesId = null)
    {
        using var heard = HeardMessage.Of(text, index);
        var codes = CodeMentions.In(heard.Words);
        if (unsafeRequests.Page(heard) is not { } unsafePage)
            return Told(heard, codes, seriesId);
        var refused = Refused(unsafePage, codes);
        return heard.DangerRule is null ? refused.Beside(Told(heard, codes, seriesId)) : refused;
    }

    /// <summary>What a message tells of, whatever it asks for.</summary>
    private MatchResult Told(HeardMessage heard, ImmutableArray<string> codes, string? seriesId)
    {
        if (VagueTalk.Is(heard.Words))
            return Unclear(codes);
        var shown = seriesId is null
            ? []
            : codes.SelectMany(code => causes.SymptomsShownAs(seriesId, code)).ToImmutableArray();
        if (shown.IsEmpty && OffTopicTalk.IsOutright(heard))
            return NothingRelevant(offTopic.Page(heard));
        var otherTalk = shown.IsEmpty ? OffTopicTalk.ProbabilityOf(heard) : 0;
        if (otherTalk >= MatchThresholds.OtherTalk)
            return OtherTalk(heard, otherTalk, codes);
        var denied = Denials.Of(heard, index);
        var closest = shown.IsEmpty ? heard.Symptoms.Select(hit => hit.Score).FirstOrDefault() : 1;
        var result = Ranked((heard.Faults, closest), Symptoms(SymptomRanking.Rank(heard.Symptoms), shown), codes,
            denied, WholeOf(heard, denied));
        return result.Decision == MatchDecision.Fault && otherTalk >= MatchThresholds.ClearlyOurs
            ? result with { Decision = MatchDecision.Choices }
            : result;
    }

    private WholeMessage WholeOf(HeardMessage heard, ImmutableArray<DeniedMention> denied)
    {
        var ruledOut = denied.Where(mention => mention.Kind == NodeKind.Fault).Select(mention => mention.Id)
            .ToHashSet(StringComparer.Ordinal);
        var doubted = heard.Faults
            .Where(hit => hit.Probability >= MatchThresholds.ToldAllTheSame && ruledOut.Remove(hit.Entry.Id))
            .Select(hit => hit.Entry.Id).ToHashSet(StringComparer.Ordinal);
        return new WholeMessage(
            index.FindPlain(heard.Whole, NodeKind.Fault),
            index.Holding(heard.Words, NodeKind.Fault).ToHashSet(StringComparer.Ordinal),
            ruledOut, AfterTurn(heard.Words))
        {
            Doubted = doubted,
        };
    }

    private Dictionary<string, double>? AfterTurn(ImmutableArray<Word> words)
    {
        if (Contrast.After(words) is not { IsEmpty: false } after)
            return null;
        using var question = index.Ask(index.Analyze(after));
        return index.Find(question, NodeKind.Fault)
            .ToDictionary(hit => hit.Entry.Id, hit => hit.Probability, StringComparer.Ordinal);
    }

    private MatchResult Ranked((ImmutableArray<SearchHit> Faults, double ClosestSymptom) fits,
        ImmutableArray<MatchCandidate> symptoms,
        ImmutableArray<string> codes, ImmutableArray<DeniedMention> denied, WholeMessage whole)
    {
        var ranked = FaultRanking.Rank(fits.Faults, symptoms, causes, whole);
        var decision = Decide(ranked);
        if (decision == MatchDecision.Fault && (ReadsAsSymptom(fits, ranked[0].Id) || !whole.FindsFirst(ranked[0].Id)))
            decision = MatchDecision.Choices;
        if (decision == MatchDecision.None && (codes.Length > 0 || denied.Length > 0))
            decision = MatchDecision.Clarify;
        return new MatchResult(decision, decision == MatchDecision.None
            ? []
            : [.. ranked.Take(MatchThresholds.MostCandidates)],
            decision == MatchDecision.None ? [] : symptoms, null, codes, denied);
    }

    /// <summary>What reads more like a complaint than like its likeliest cause leaves the cause open.</summary>
    private static bool ReadsAsSymptom((ImmutableArray<SearchHit> Faults, double ClosestSymptom) fits,
        string likeliest) =>
        fits.ClosestSymptom * MatchThresholds.OverSymptom
            > fits.Faults.Where(hit => hit.Entry.Id == likeliest).Select(hit => hit.Score).DefaultIfEmpty().Max();

    private static MatchDecision Decide(ImmutableArray<MatchCandidate> ranked) => ranked switch
    {
        [] => MatchDecision.None,
        [var best, ..] when best.Score >= MatchThresholds.Certain => MatchDecision.Fault,
        [var best, ..] when best.Score >= MatchThresholds.WorthOffering => MatchDecision.Choices,
        _ => MatchDecision.Clarify,
    };

    private static ImmutableArray<MatchCandidate> Symptoms(ImmutableArray<SearchHit> symptoms,
        ImmutableArray<string> shown)
    {
        var found = symptoms
            .Where(hit => hit.Score >= MatchThresholds.FaintestSymptom && !shown.Contains(hit.Entry.Id))
            .Select(hit => new MatchCandidate(hit.Entry.Id, hit.Score));
        return [.. shown.Distinct().Order(StringComparer.Ordinal)
            .Select(id => new MatchCandidate(id, 1)), .. found.Take(MatchThresholds.MostCandidates)];
    }

    private static MatchResult Refused(string? page, ImmutableArray<string> codes) =>
        new(MatchDecision.Refuse, [], [], page, codes, []);

    private static MatchResult NothingRelevant(string? page) => new(MatchDecision.None, [], [], page, [], []);

    /// <summary>Too little is said, or nothing but a code without a series to read it by.</summary>
    private static MatchResult Unclear(ImmutableArray<string> codes) =>
        new(MatchDecision.Clarify, [], [], null, codes, []);

    /// <summary>
    /// What may be of this trade after all is asked about; so is a code that is not another machine's, and what rules
    /// something out: "fan motor is new, did not help".
    /// </summary>
    private MatchResult OtherTalk(HeardMessage heard, double probability, ImmutableArray<string> codes)
    {
        if (heard.Hearing.NamesAnotherMachine)
            return NothingRelevant(offTopic.Page(heard));
        var denied = Denials.Of(heard, index);
        return probability < MatchThresholds.ClearlyOther || !codes.IsEmpty || !denied.IsEmpty
            ? Unclear(codes) with { Denied = denied }
            : NothingRelevant(offTopic.Page(heard));
    }
}
