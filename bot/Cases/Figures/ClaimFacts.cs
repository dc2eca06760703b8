using DxAssistant.Cases.Claims;

namespace DxAssistant.Cases.Figures;

/// <summary>What one claim adds to the figures of the desk.</summary>
/// <param name="Part">The part that is claimed.</param>
/// <param name="IsProven">
/// Whether the sheet has all that the page of the fault demands, and the belief that the terms want.
/// </param>
public sealed record ClaimFacts(string Part, bool IsProven)
{
    /// <returns>Null while it is a draft: nothing is claimed yet.</returns>
    public static ClaimFacts? Of(Claim claim) => claim.Sheet is { } sheet
        ? new ClaimFacts(sheet.Part, sheet.Missing.IsEmpty && sheet.Belief >= sheet.Needed) : null;
}
