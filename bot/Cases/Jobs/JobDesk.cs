using System.Collections.Immutable;
using DxAssistant.Cases.Photos;
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
    public async Task<JobAnswer> DoAsync(string caseId, string turnId, JobAct act, string by,
        CancellationToken cancel = default)
    {
        var done = await AppendAsync(caseId, Named
            + turnId, job => new JobRules(library(), Today()).Decide(job, act, by), cancel);
        if (done is JobAnswer.Saved && act is JobAct.DropPhoto drop)
            await store.DropPhotoAsync(caseId, drop.Hash, cancel);
        return done;
    }

    /// <summary>Adds a photo: its bytes first, then the entry that names them.</summary>
    /// <param name="bytes">As they came from outside.</param>
    public async Task<JobAnswer> AddPhotoAsync(
        string caseId, string turnId, byte[] bytes, string shows, int unit, string by,
        CancellationToken cancel = default)
    {
        if (await ReadAsync(caseId, cancel) is null) return new JobAnswer.Unknown();
        if (Photo.Take(bytes) is not { } photo)
            return new JobAnswer.Refused("That is no whole JPEG, PNG or WebP picture. Nothing was kept.");
        await store.KeepPhotoAsync(caseId, photo.Hash, photo.Bytes, cancel);
        var done = await DoAsync(caseId, turnId,
            new JobAct.AddPhoto(photo.Hash, photo.Type, photo.Bytes.Length, shows, unit), by, cancel);
        if (done is JobAnswer.Refused
            && (await ReadAsync(caseId, cancel))!.Photos.All(known => known.Hash != photo.Hash))
            await store.DropPhotoAsync(caseId, photo.Hash, cancel);
        return done;
    }

    /// <summary>A photo of a job; null when there is none of that hash, or its bytes were removed.</summary>
    /// <exception cref="CaseFileException">Its bytes are not those that the log names.</exception>
    public async Task<Photo?> PhotoAsync(string caseId, string hash, CancellationToken cancel = default)
    {
        if (await ReadAsync(caseId, cancel) is not { } job || job.Photos.All(photo => photo.Hash != hash)) return null;
        if (await store.PhotoAsync(caseId, hash, cancel) is not { } bytes) return null;
        if (Photo.HashOf(bytes) != hash)
            throw new CaseFileException($"photo {hash} of case {caseId} was altered: restore the cases from a backup");

        // What it is, is said by the bytes, not by the entry.
        return Photo.Take(bytes) is { } photo ? photo with { Bytes = bytes } : null;
    }

    /// <summary>
    /// What would keep something from being written down for a job of which nothing is noted yet; null when nothing
    /// would.
    /// </summary>
    public JobAnswer.Refused? Try(JobAct act) => new JobRules(library(), Today()).Decide(Job.Of([]), act, "").Why;

    private async Task<JobAnswer> AppendAsync(
        string caseId, string turnId, Func<Job, (AsideEvent? Event, JobAnswer.Refused? Why)> decide,
        CancellationToken cancel)
    {
        for (int race = 0; race < MostRaces; race++)
        {
            var log = await store.ReadAsync(caseId, cancel);
            if (log.IsEmpty) return new JobAnswer.Unknown();
            if (log.Any(stored => stored.TurnId == turnId)) return new JobAnswer.Saved(Job.Of(log));
            var (happened, why) = decide(Job.Of(log));
            if (happened is null) return why!;
            if (await store.AppendAsync(caseId, log.Length, turnId, [happened],
                cancel) is AppendResult.Appended appended)
                return new JobAnswer.Saved(Job.Of([.. log, .. appended.Events]));
        }

        throw new InvalidOperationException(
            $"case {caseId} changed {MostRaces} times while something was written down");
    }

    private DateOnly Today() => DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
}
