using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Cases.Jobs;

/// <summary>Writes down what belongs to a job beside the walk: reads the log, decides, appends.</summary>
/// <param name="library">The pages to use now; null where there are none.</param>
public sealed class JobDesk(ICaseStore store, TimeProvider clock, Func<Library?> library)
{
    // As at the desk of the walk: so many lost races in a row are a fault, not traffic.
    private const int MostRaces = 100;

    // So that no turn of the walk is taken for one of these sent again.
    private const string Named = "job.";

    /// <summary>The job of a case; null when there is no such case.</summary>
    public async Task<Job?> ReadAsync(string caseId, CancellationToken cancel = default) =>
        await store.ReadAsync(caseId, cancel) is { IsEmpty: false } log ? Job.Of(log) : null;

    /// <summary>Writes one thing down.</summary>
    /// <param name="turnId">The sender's own id: sent again, it is not written down twice.</param>
    public Task<JobAnswer> DoAsync(string caseId, string turnId, JobAct act, string by, CancellationToken cancel = default) =>
        AppendAsync(caseId, Named + turnId, job => new JobRules(library(), Today()).Decide(job, act, by), cancel);

    /// <summary>What would keep something from being written down for a job of which nothing is noted yet; null when nothing would.</summary>
    public JobAnswer.Refused? Try(JobAct act) => new JobRules(library(), Today()).Decide(Job.Of([]), act, "").Why;

    private async Task<JobAnswer> AppendAsync(
        string caseId, string turnId, Func<Job, (AsideEvent? Event, JobAnswer.Refused? Why)> decide, CancellationToken cancel)
    {
        for (int race = 0; race < MostRaces; race++)
        {
            var log = await store.ReadAsync(caseId, cancel);
            if (log.IsEmpty) return new JobAnswer.Unknown();
            if (log.Any(stored => stored.TurnId == turnId)) return new JobAnswer.Saved(Job.Of(log));
            var (happened, why) = decide(Job.Of(log));
            if (happened is null) return why!;
            if (await store.AppendAsync(caseId, log.Length, turnId, [happened], cancel) is AppendResult.Appended appended)
                return new JobAnswer.Saved(Job.Of([.. log, .. appended.Events]));
        }

        throw new InvalidOperationException($"case {caseId} changed {MostRaces} times while something was written down");
    }

    private DateOnly Today() => DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
}
