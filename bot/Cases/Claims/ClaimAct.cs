namespace DxAssistant.Cases.Claims;

/// <summary>What somebody wants done to a claim.</summary>
public abstract record ClaimAct
{
    private ClaimAct() { }

    public sealed record TellUnit(ClaimUnit Unit) : ClaimAct;

    /// <param name="Override">Why, although something is missing; null when nothing is thought to be.</param>
    public sealed record MakeReady(string? Override) : ClaimAct;

    public sealed record Submit : ClaimAct;

    public sealed record Approve(string? Why) : ClaimAct;

    public sealed record Decline(string? Why) : ClaimAct;

    public sealed record Return(string? Why) : ClaimAct;
}
