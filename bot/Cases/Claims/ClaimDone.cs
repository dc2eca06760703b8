using System.Collections.Immutable;

namespace DxAssistant.Cases.Claims;

/// <summary>What the desk did with a wish.</summary>
public abstract record ClaimDone
{
    private ClaimDone() { }

    public sealed record Saved(ClaimExport Claim) : ClaimDone;

    /// <param name="Missing">What stands in the way; never empty.</param>
    public sealed record Refused(ImmutableArray<string> Missing) : ClaimDone;

    /// <summary>Somebody else changed the claim since it was read.</summary>
    public sealed record Overtaken(ClaimExport Claim) : ClaimDone;

    public sealed record Unknown : ClaimDone;
}
