using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Search.Clauses;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>A message and all that the index knows of it, before anything is decided.</summary>
/// <param name="Whole">All its words, asked of the index.</param>
/// <param name="Said">What it complains of, asked of the index.</param>
/// <param name="Faults">The faults that fit what it complains of, best first.</param>
/// <param name="Symptoms">The same for symptoms.</param>
/// <param name="Refusals">The refusal pages that fit all its words, best first.</param>
/// <param name="Intention">What its words make it.</param>
/// <param name="DangerRule">The rule of dangerous requests that fits it, or null.</param>
internal sealed record HeardMessage(
    ImmutableArray<Word> Words, ImmutableArray<Token> Tokens, ClauseReading Reading, Question Whole, Question Said,
    ImmutableArray<SearchHit> Faults, ImmutableArray<SearchHit> Symptoms, ImmutableArray<SearchHit> Refusals,
    RequestWords Request, Intention Intention, UnsafeRule? DangerRule, Hearing Hearing) : IDisposable
{
    /// <summary>How well the best refusal page fits.</summary>
    public double LikenessToDanger => Refusals.IsEmpty ? 0 : Refusals[0].Score;

    /// <summary>How well the best of what only sounds dangerous fits.</summary>
    public double LikenessToHarmless { get; init; }

    /// <summary>How well the best page of other talk fits.</summary>
    public double LikenessToTalk { get; init; }

    /// <summary>How many of its words name something of the glossary.</summary>
    public int Concepts => Tokens.Where(token => token is { IsConcept: true, Role: TokenRole.Main })
        .Select(token => token.Position).Distinct().Count();

    /// <summary>It is an answer or a scrap, like "every time it runs".</summary>
    public bool IsScrap => Whole.Said.Terms.Count <= 1;

    public static HeardMessage Of(string text, SearchIndex index)
    {
        var words = index.Words(text);
        var tokens = index.Analyze(words);
        var reading = ClauseReader.Read(tokens);
        var whole = index.Ask(tokens);
        var said = reading.RuledOut.IsEmpty ? whole : index.Ask(WithSubject(reading, index));
        var faults = WithNoneOfThese(index.Find(said, NodeKind.Fault), whole, reading.RuledOut.IsEmpty, index);
        var symptoms = index.Find(said, NodeKind.Symptom);
        var request = new RequestWords(words, tokens, text.TrimEnd().EndsWith('?'));
        var hearing = new Hearing(
            Math.Max(BestOf(faults), BestOf(symptoms)), faults.Select(hit => hit.Probability).DefaultIfEmpty()
                .Max(), request.Count,
            index.SaysEnough(tokens), OffTopicTalk.NamesAnotherMachine(request, tokens), index.NamesPart(tokens),
            PlainQuestions.Is(request, tokens), index.KnownShare(tokens));
        return new HeardMessage(words, tokens, reading, whole, said, faults, symptoms,
            index.Find(whole, NodeKind.Refusal), request,
            index.IntentionOf(whole), UnsafeRules.Fitting(request), hearing)
        {
            LikenessToHarmless = BestOf(index.Find(whole, NodeKind.Harmless)),
            LikenessToTalk = BestOf(index.Find(whole, NodeKind.OffTopic)),
        };
    }

    /// <summary>
    /// Frees the memory of what was asked of the index; after that nothing more may be asked about it.
    /// </summary>
    public void Dispose()
    {
        Whole.Dispose();
        if (!ReferenceEquals(Said, Whole))
            Said.Dispose();
    }

    private static double BestOf(ImmutableArray<SearchHit> hits) => hits.IsEmpty ? 0 : hits[0].Score;

    /// <summary>
    /// "windings are perfect but it won't spin": a complaint that names no part is about the one just named, which
    /// counts little; "valve moves fine, its coil is open": it is about a part of the one named, which counts.
    /// </summary>
    private static ImmutableArray<Token> WithSubject(ClauseReading reading, SearchIndex index)
    {
        var named = reading.RuledOut.SelectMany(mention => mention.Tokens)
            .Where(token => !token.IsNegated && !States.IsWell(token.Term));
        if (index.NamesPart(reading.Complaint) && !reading.Complaint.Any(IsPossessive))
            return reading.Complaint.Any(IsPlace) || !reading.Complaint.Any(IsAtBoth)
                ? reading.Complaint
                : [.. reading.Complaint, .. named.Where(IsPlace).Take(1)];
        return [.. reading.Complaint, .. HasPartOf(reading.Complaint, index)
            ? named.Where(token => token.IsConcept)
            : named.Select(token => token with { Role = TokenRole.Aside })];
    }

    /// <summary>
    /// "the outdoor fan plug is seated, its motor is open": the trouble is where the part was that was named before.
    /// </summary>
    private static bool IsPlace(Token token) => token.Term is "indoor" or "outdoor";

    /// <summary>What there is of both indoors and outdoors.</summary>
    private static bool IsAtBoth(Token token) => token.Term is "fan" or "motor" or "board" or "coil";

    /// <summary>"the flap moves free, its motor is dead".</summary>
    private static bool IsPossessive(Token token) => token.Said == "its";

    /// <summary>
    /// "its coil is open", but not "its the coil" or "its burnt", nor "the motor has 310 volts at its plug".
    /// </summary>
    private static bool HasPartOf(ImmutableArray<Token> complaint, SearchIndex index) =>
        complaint.Where(IsPossessive).Any(its =>
            complaint.Any(token => token.Position == its.Position + 1
                && token is { Role: TokenRole.Main, IsNegated: false } && !States.Ill.Contains(token.Term))
            && !index.NamesPart(complaint.Where(token => token.Position < its.Position
                && !complaint.Any(other => other.Position == token.Position && States.Ill.Contains(other.Term)))));

    /// <summary>
    /// "works fine now" rules everything out, and so tells of a trouble that comes and goes: there all words count.
    /// </summary>
    private static ImmutableArray<SearchHit> WithNoneOfThese(
        ImmutableArray<SearchHit> faults, Question question, bool everythingCounts, SearchIndex index)
    {
        if (everythingCounts)
            return faults;
        var whole = index.Find(question, NodeKind.Fault)
            .FirstOrDefault(hit => hit.Entry.Id == FaultId.NoneOfThese.Value);
        return whole is null || faults.Any(hit => hit.Entry == whole.Entry && hit.Score >= whole.Score)
            ? faults
            : [.. faults.Where(hit => hit.Entry != whole.Entry).Append(whole).OrderByDescending(hit => hit.Score)];
    }
}
