using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Clauses;

namespace DxAssistant.Knowledge.Search;

/// <summary>What was made of a message.</summary>
/// <param name="Candidates">The faults that fit, at most 5, best first; empty for None and Refuse.</param>
/// <param name="Symptoms">The symptoms that fit, best first; empty for None and Refuse.</param>
/// <param name="RefusalId">The page of the fixed answer, for Refuse and for None where one fits; else null.</param>
/// <param name="Codes">Display codes as written, in capitals, in the order of the message.</param>
/// <param name="Denied">What the message rules out, by kind and id.</param>
public sealed record MatchResult(
    MatchDecision Decision,
    ImmutableArray<MatchCandidate> Candidates,
    ImmutableArray<MatchCandidate> Symptoms,
    string? RefusalId,
    ImmutableArray<string> Codes,
    ImmutableArray<DeniedMention> Denied)
{
    /// <summary>Whether a request is refused only because it reads like those of the pages, and by no rule.</summary>
    public bool IsByLikeness { get; init; }

    /// <summary>Whether no page has anything to say to the message.</summary>
    public bool TellsNothing => Candidates.IsEmpty && Symptoms.IsEmpty && RefusalId is null;

    /// <summary>Whether all that is said is that something is wrong.</summary>
    public bool IsVague => Decision == MatchDecision.Clarify && TellsNothing && Codes.IsEmpty;
}
