using System.Collections.Immutable;
using DxAssistant.Knowledge.Warranty;

namespace DxAssistant.Cases.Claims;

/// <summary>What the terms say is paid. A person decides.</summary>
/// <param name="Part"><c>covered</c>, <c>not covered</c> or <c>not settled</c>.</param>
/// <param name="LabourMinutes">The minutes of work that are paid; 0 when none are.</param>
public sealed record ClaimCoverage(
    string Part, string Labour, double LabourMinutes, ImmutableArray<ClaimReason> Reasons)
{
    public static ClaimCoverage Of(CoverageDecision decision) => new(
        Word(decision.Part), Word(decision.Labour), decision.LabourMinutes,
        [.. decision.Reasons.Select(ClaimReason.Of)]);

    private static string Word(CoverageAnswer answer) => answer switch
    {
        CoverageAnswer.Covered => "covered",
        CoverageAnswer.NotCovered => "not covered",
        _ => "not settled",
    };
}
