namespace DxAssistant.Cases.Claims;

/// <summary>What other programs are told when a claim changes its state.</summary>
/// <param name="Sequence">The entry of the claim's log that did it: together with the claim it names the news, so that
/// one told twice is known.</param>
/// <param name="State">The state it is in now.</param>
public sealed record ClaimNews(
    string Claim, long Sequence, string Case, ClaimState State, DateTimeOffset At, string By, string? Why,
    string? Serial, string? Part)
{
    internal static ClaimNews Of(Claim claim)
    {
        var last = claim.Log[^1];
        return new ClaimNews(
            claim.Id, last.Sequence, claim.Case, claim.State, last.At, last.By, WhyOf(last.Event), claim.Unit.Serial,
            claim.Sheet?.Part);
    }

    private static string? WhyOf(ClaimEvent happened) => happened switch
    {
        ClaimEvent.Readied readied => readied.Override,
        ClaimEvent.Approved approved => approved.Why,
        ClaimEvent.Declined declined => declined.Why,
        ClaimEvent.Returned returned => returned.Why,
        _ => null,
    };
}
