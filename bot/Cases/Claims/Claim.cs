using System.Collections.Immutable;

namespace DxAssistant.Cases.Claims;

/// <summary>A claim as its log leaves it.</summary>
/// <param name="Sheet">The sheet that stands; null in a draft, whose sheet follows the case.</param>
/// <param name="Override">Why it was made ready although something was missing; null when nothing was.</param>
public sealed record Claim(
    string Id, string Case, ClaimState State, ClaimUnit Unit, ClaimSheet? Sheet, string? Override,
    ImmutableArray<ClaimEntry> Log)
{
    /// <param name="log">The whole log of the claim; begins with <see cref="ClaimEvent.Begun"/>.</param>
    public static Claim Of(string id, ImmutableArray<ClaimEntry> log)
    {
        var begun = (ClaimEvent.Begun)log[0].Event;
        var claim = new Claim(id, begun.Case, ClaimState.Draft, ClaimUnit.Unknown, null, null, log);
        return log.Skip(1).Aggregate(claim, (state, entry) => Apply(state, entry.Event));
    }

    private static Claim Apply(Claim claim, ClaimEvent happened) => happened switch
    {
        ClaimEvent.UnitTold told =>
            claim with { Unit = told.Unit, State = ClaimState.Draft, Sheet = null, Override = null },
        ClaimEvent.Readied readied => claim with
        {
            State = ClaimState.Ready, Sheet = readied.Sheet, Override = readied.Override,
        },
        ClaimEvent.Submitted => claim with { State = ClaimState.Submitted },
        ClaimEvent.Approved => claim with { State = ClaimState.Approved },
        ClaimEvent.Declined => claim with { State = ClaimState.Declined },
        ClaimEvent.Returned => claim with { State = ClaimState.Returned },
        _ => throw new ArgumentException($"no such event: {happened.GetType().Name}", nameof(happened)),
    };
}
