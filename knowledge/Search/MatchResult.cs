using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Clauses;

namespace DxAssistant.Knowledge.Search;

/// <summary>What was made of a message.</summary>
/// <param name="Candidates">
/// The faults that fit, at most 5, best first; empty for None, and for Refuse unless by likeness alone.
/// </param>
/// <param name="Symptoms">The symptoms that fit, best first; empty as the faults are.</param>
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
    /// <summary>
    /// What the message would come to if it asked for nothing dangerous; null unless it is refused by likeness alone.
    /// </summary>
    public MatchDecision? Besides { get; init; }

    /// <summary>Whether a request is refused only because it reads like those of the pages, and by no rule.</summary>
    public bool IsByLikeness => Besides is not null;

    /// <summary>Refused by likeness alone: what the message complains of is heard all the same.</summary>
    internal MatchResult Beside(MatchResult told) => this with
    {
        Besides = told.Decision,
        Candidates = told.IsOffered ? told.Candidates : [],
        Symptoms = told.IsOffered ? told.Symptoms : [],
        Denied = told.Denied,
    };

    /// <summary>The same where it cannot be a request, nor tell of a trouble: an answer that fits nothing.</summary>
    public MatchResult Unrefused() => this with
    {
        Decision = MatchDecision.None, RefusalId = null, Besides = null, Candidates = [], Symptoms = [],
    };

    private bool IsOffered => Decision is MatchDecision.Fault or MatchDecision.Choices;

    /// <summary>Whether no page has anything to say to the message.</summary>
    public bool TellsNothing => Candidates.IsEmpty && Symptoms.IsEmpty && RefusalId is null;

    /// <summary>Whether all that is said is that something is wrong.</summary>
    public bool IsVague => Decision == MatchDecision.Clarify && TellsNothing && Codes.IsEmpty;
}
