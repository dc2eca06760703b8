using System.Collections.Immutable;

namespace DxAssistant.Cases.Claims;

/// <summary>What becomes of an act.</summary>
public abstract record ClaimAnswer
{
    private ClaimAnswer() { }

    public sealed record Done(ClaimEvent Event) : ClaimAnswer;

    /// <param name="Missing">What stands in the way, each a line a person can act on; never empty.</param>
    public sealed record Refused(ImmutableArray<string> Missing) : ClaimAnswer;
}
