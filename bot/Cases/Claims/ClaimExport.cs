using System.Collections.Immutable;

namespace DxAssistant.Cases.Claims;

/// <summary>A claim as it is shown and given to other programs.</summary>
/// <param name="Sheet">
/// The sheet that stands, or in a draft the one the case gives now; null when it gives none.
/// </param>
/// <param name="Wanting">What keeps it from being ready; empty when nothing does.</param>
/// <param name="Override">Why it was made ready all the same.</param>
/// <param name="Line">The line at the foot of the sheet; null in a draft, whose sheet is not final.</param>
public sealed record ClaimExport(
    string Id, string Case, ClaimState State, ClaimUnit Unit, ClaimSheet? Sheet, ImmutableArray<string> Wanting,
    string? Override, string? Line, ImmutableArray<ClaimEntry> Log)
{
    internal static ClaimExport Of(Claim claim, SheetAnswer now)
    {
        var sheet = claim.Sheet ?? (now as SheetAnswer.Built)?.Sheet;
        ImmutableArray<string> wanting = now is SheetAnswer.None none && claim.Sheet is null ? [none.Why]
            : sheet is null ? [] : ClaimRules.Wanting(sheet);
        return new ClaimExport(
            claim.Id, claim.Case, claim.State, claim.Unit, sheet, wanting, claim.Override,
            claim.Sheet is { } final ? VerifyLine.Of(claim.Id, final).ToString() : null,
            [.. claim.Log.Select(entry => entry.Event is ClaimEvent.Readied ready
                ? entry with { Event = ready with { Sheet = null } } : entry)]);
    }
}
