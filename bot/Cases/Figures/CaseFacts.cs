using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Cases.Jobs;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;

namespace DxAssistant.Cases.Figures;

/// <summary>What one case adds to the figures of the desk.</summary>
/// <param name="Month">The month it was opened in, UTC, such as <c>2030-05</c>.</param>
/// <param name="Series">Null when it was never said.</param>
/// <param name="Faults">The faults that were proven by a cure.</param>
/// <param name="Ended">How it ended; null while it is open.</param>
/// <param name="Repairs">Repairs that were tried out.</param>
/// <param name="InVain">Those of them that cured nothing.</param>
/// <param name="Visits">How often somebody came for it; 1 or more.</param>
/// <param name="MinutesToProof">From its first entry to the first cure; null when there was none.</param>
/// <param name="Skipped">Checks that were left out, each as often as it was.</param>
public sealed record CaseFacts(
    string Month, string? Series, ImmutableArray<string> Faults, string? Ended, int Repairs, int InVain, int Visits,
    double? MinutesToProof, ImmutableArray<string> Skipped)
{
    /// <summary>Whether it was cured with the first repair that was tried.</summary>
    public bool IsFirstFix => Ended == "repaired" && Repairs > 0 && InVain == 0;

    /// <summary>Whether it was cured without anybody coming again.</summary>
    public bool IsFirstVisit => Ended == "repaired" && Repairs > InVain && Visits == 1;

    /// <summary>Whether it ended with no fault found.</summary>
    public bool IsNothingFound => Ended == "watch";

    /// <param name="log">The whole log of the case; not empty.</param>
    public static CaseFacts Of(ImmutableArray<StoredEvent> log)
    {
        var state = Fold.Apply(CaseState.New, log.Select(stored => stored.Event));
        var tried = log.Select(stored => stored.Event).OfType<RepairVerified>().ToList();
        var cure = log.FirstOrDefault(stored => stored.Event is RepairVerified { Works: true });
        return new CaseFacts(
            log[0].At.ToString("yyyy-MM", CultureInfo.InvariantCulture), state.Series, ProvenFaults.Of(log),
            state.ClosedHow,
            tried.Count, tried.Count(repair => !repair.Works), Came(log), cure is null
                ? null
                : (cure.At - log[0].At).TotalMinutes,
            [.. log.Select(stored => stored.Event).OfType<CheckPassedOver>().Select(passed => passed.Check)]);
    }

    // A case that is taken up again is another visit, whether or not that was written down.
    private static int Came(ImmutableArray<StoredEvent> log) => Math.Max(
        Job.Of(log).Visits.Length, 1 + log.Count(stored => stored.Event is Reopened));
}
