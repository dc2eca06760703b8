using System.Collections.Immutable;
using System.Globalization;

namespace DxAssistant.Cases.Claims;

/// <summary>What may be done to a claim, and what stands in the way. Pure.</summary>
public static class ClaimRules
{
    /// <summary>The longest reason, in characters.</summary>
    public const int LongestReason = 1000;

    /// <param name="now">The sheet as the case has it now.</param>
    public static ClaimAnswer Decide(Claim claim, ClaimAct act, Clerk who, ClaimSheet now) => act switch
    {
        ClaimAct.TellUnit told => Unless(
            In(claim, "described", [ClaimState.Draft, ClaimState.Ready, ClaimState.Returned]),
            new ClaimEvent.UnitTold(told.Unit)),
        ClaimAct.MakeReady ready => In(claim, "made ready", [ClaimState.Draft, ClaimState.Returned])
            ?? MakeReady(ready, who, now),
        ClaimAct.Submit => Unless(In(claim, "submitted", [ClaimState.Ready]), new ClaimEvent.Submitted()),
        ClaimAct.Approve yes => Unless(Decision(claim, "approved", who), new ClaimEvent.Approved(Reason(yes.Why))),
        ClaimAct.Decline no => Decision(claim, "declined", who)
            ?? Because(no.Why, "declined", why => new ClaimEvent.Declined(why)),
        ClaimAct.Return back => Decision(claim, "returned", who)
            ?? Because(back.Why, "returned", why => new ClaimEvent.Returned(why)),
        _ => throw new ArgumentException($"no such act: {act.GetType().Name}", nameof(act)),
    };

    /// <summary>What keeps a sheet from being ready by itself; empty when nothing does.</summary>
    public static ImmutableArray<string> Wanting(ClaimSheet sheet)
    {
        var wanting = ImmutableArray.CreateBuilder<string>();
        wanting.AddRange(
            sheet.Missing.Select(
                check => $"the page of the fault demands the check “{check}”: it has no settled result"));
        if (sheet.LeftPossible is { } left)
            wanting.Add(
                $"no fault was proven; left possible: {string.Join(", ", left.Select(fault => $"“{fault.Title}” {Percent(fault.Belief)}"))}");
        if (sheet.Belief < sheet.Needed)
            wanting.Add(
                $"the evidence makes the fault {Percent(sheet.Belief)} likely, the terms want {Percent(sheet.Needed)}");
        if (string.IsNullOrWhiteSpace(sheet.Unit.Serial))
            wanting.Add("the serial number of the unit is not written down");
        return wanting.ToImmutable();
    }

    private static ClaimAnswer MakeReady(ClaimAct.MakeReady ready, Clerk who, ClaimSheet now)
    {
        var wanting = Wanting(now);
        if (wanting.IsEmpty) return new ClaimAnswer.Done(new ClaimEvent.Readied(now, null));
        if (Reason(ready.Override) is not { } why) return new ClaimAnswer.Refused(wanting);
        return who.MayOverride
            ? new ClaimAnswer.Done(new ClaimEvent.Readied(now, why))
            : Refused($"{who.Name} may not make a claim ready with something missing", [.. wanting]);
    }

    private static ClaimAnswer.Refused? In(Claim claim, string how, ReadOnlySpan<ClaimState> states) =>
        states.Contains(claim.State)
            ? null
            : Refused($"the claim is {claim.State.ToString().ToLowerInvariant()}: it cannot be {how} now");

    private static ClaimAnswer.Refused? Decision(Claim claim, string how, Clerk who) =>
        who.MayDecide ? In(claim, how, [ClaimState.Submitted]) : Refused($"{who.Name} may not decide on claims");

    private static ClaimAnswer Because(string? why, string how, Func<string, ClaimEvent> made) =>
        Reason(why) is { } reason ? new ClaimAnswer.Done(made(reason)) : Refused($"write down why the claim is {how}");

    private static string? Reason(string? why) => string.IsNullOrWhiteSpace(why)
        ? null : why.Trim() is { Length: > LongestReason } longer ? longer[..LongestReason] : why.Trim();

    private static string Percent(double share) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(share * 1000) / 10:0.#} %");

    private static ClaimAnswer Unless(ClaimAnswer.Refused? hindered, ClaimEvent happened) =>
        hindered is null ? new ClaimAnswer.Done(happened) : hindered;

    private static ClaimAnswer.Refused Refused(string first, params ReadOnlySpan<string> more) =>
        new([first, .. more]);
}
