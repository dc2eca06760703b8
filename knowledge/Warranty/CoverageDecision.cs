using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Warranty;

/// <summary>What is paid, and every reason why or why not, in the order in which a desk asks.</summary>
/// <param name="LabourMinutes">The minutes of work that are paid; 0 when none are.</param>
public sealed record CoverageDecision(
    CoverageAnswer Part, CoverageAnswer Labour, double LabourMinutes, ImmutableArray<CoverageReason> Reasons);
