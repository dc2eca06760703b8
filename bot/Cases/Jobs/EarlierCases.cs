using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;
using DxAssistant.Knowledge.Serials;

namespace DxAssistant.Cases.Jobs;

/// <summary>Finds what was repaired before on a unit, by its serial number.</summary>
public sealed class EarlierCases(ICaseStore store)
{
    private const int Most = 5;

    /// <summary>The repairs of other cases after which the unit worked, the latest first.</summary>
    /// <param name="except">The case that asks.</param>
    /// <param name="sight">How much of them is told.</param>
    public async Task<ImmutableArray<EarlierWork>> FindAsync(
        string serial, string except, DateOnly today, EarlierSight sight, CancellationToken cancel = default)
    {
        var found = new List<EarlierWork>();
        foreach (string caseId in await store.WithSerialAsync(serial, cancel))
            if (caseId != except) found.AddRange(await InAsync(caseId, serial, today, cancel));
        return Latest(found.Select(work => sight.Of(work, today)).OfType<EarlierWork>());
    }

    /// <summary>The repairs of one case after which the unit worked, the latest first.</summary>
    /// <param name="serial">The unit; null for whichever units the case has.</param>
    public static ImmutableArray<EarlierWork> In(string caseId, ImmutableArray<StoredEvent> log, string? serial,
        DateOnly today)
    {
        var ends = log.Where(stored => stored.Event is SecondFaultBegun or StartedOver or Reopened)
            .Select(stored => (int)stored.Sequence - 1).Append(log.Length);
        return Latest(ends.SelectMany(end => Within(caseId, log, end, serial, today)));
    }

    // A log that was altered says nothing; the command that verifies logs says that.
    private async Task<ImmutableArray<EarlierWork>> InAsync(string caseId, string serial, DateOnly today,
        CancellationToken cancel)
    {
        try
        {
            return In(caseId, await store.ReadAsync(caseId, cancel), serial, today);
        }
        catch (CaseFileException)
        {
            return [];
        }
    }

    private static IEnumerable<EarlierWork> Within(string caseId, ImmutableArray<StoredEvent> log, int end,
        string? serial, DateOnly today)
    {
        var state = Fold.Apply(CaseState.New, log.Take(end).Select(stored => stored.Event));
        foreach (var cured in Cured(state))
        {
            int at = log[..end].ToList().FindLastIndex(stored => IsCure(stored.Event, cured.Repair));
            if (at < 0 || (serial is not null && SerialAt(log, at) != SerialPattern.Bare(serial))) continue;
            var done = DateOnly.FromDateTime(log[at].At.UtcDateTime);
            yield return new EarlierWork(caseId, done, Math.Max(0, today.DayNumber - done.DayNumber), cured.Repair,
                cured.Fault);
        }
    }

    // What put one fault right while another showed was tried out with the cure of the other.
    private static IEnumerable<TriedRepair> Cured(CaseState state) =>
        state.Repairs.Any(tried => tried.Works)
            ? state.Repairs.Where(tried => tried.Works || tried.Beside is not null)
            : [];

    private static bool IsCure(CaseEvent happened, string repair) => happened switch
    {
        RepairVerified verified => verified.Works && verified.Repair == repair,
        FaultBeside beside => beside.Repair == repair,
        _ => false,
    };

    // The plate may have been read after the work: the number of the unit counts, not when its serial number was noted.
    private static string SerialAt(ImmutableArray<StoredEvent> log, int at)
    {
        int unit = Job.Of(log[..(at + 1)]).AtHand;
        return SerialPattern.Bare(Job.Of(log).Units.FirstOrDefault(known => known.Number == unit)?.Serial ?? "");
    }

    private static ImmutableArray<EarlierWork> Latest(IEnumerable<EarlierWork> found) =>
    [
        .. found.OrderByDescending(work => work.Done).ThenBy(work => work.Case, StringComparer.Ordinal)
            .ThenBy(work => work.Repair, StringComparer.Ordinal).Distinct().Take(Most),
    ];
}
