using System.Collections.Immutable;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases.Brought;

/// <summary>Takes in turns that were taken without a connection: checks by replay that each follows, then appends them.
/// Bringing them again changes nothing.</summary>
/// <param name="ofVersion">The core on a version of the content; null when it is not known here.</param>
public sealed class BroughtDesk(ICaseStore store, Func<string, IResponder?> ofVersion)
{
    private const int MostRaces = 100;

    /// <param name="basis">The last sequence number of the case that the turns go on from; 0 for a case begun
    /// there.</param>
    /// <param name="turns">All that were taken since, in order; at least one.</param>
    /// <param name="by">Who brings them.</param>
    /// <exception cref="CaseFileException">They could not be saved; those that were are found when they are brought
    /// again.</exception>
    public async Task<BroughtAnswer> TakeAsync(
        string caseId, long basis, ImmutableArray<BroughtTurn> turns, string by, CancellationToken cancel = default)
    {
        if (turns.Select(turn => Signature.Other(turn, by)).FirstOrDefault(name => name is not null) is { } other)
            return new BroughtAnswer.OfAnother(other);
        turns = [.. turns.Select(turn => turn with { Events = Signature.Of(turn.Events, by) })];
        for (int race = 0; race < MostRaces; race++)
        {
            var log = await store.ReadAsync(caseId, cancel);
            int there = Known(log, basis, turns);
            if (there < 0) return new BroughtAnswer.Crossed(log.Length);
            var (made, refusal) = new Replay(by, ofVersion).Of([.. log.Select(e => e.Event)], turns.Skip(there));
            if (refusal is not null) return refusal;
            if (await AppendAsync(caseId, log.Length, made, cancel) is { } last)
                return new BroughtAnswer.Taken(last, made.Length);
        }

        throw new InvalidOperationException($"case {caseId} changed {MostRaces} times while turns were brought to it");
    }

    // How many of the turns are in the log; below 0 when it holds others after what they go on from.
    private static int Known(ImmutableArray<StoredEvent> log, long basis, ImmutableArray<BroughtTurn> turns)
    {
        if (basis > log.Length) return -1;
        // What was written down beside the walk meanwhile is in nobody's way.
        var since = log.Skip((int)basis).Where(e => e.Event is not AsideEvent).GroupBy(e => e.TurnId).ToList();
        bool allMine = since.Count <= turns.Length && since.Zip(turns).All(pair =>
            pair.First.Key == pair.Second.TurnId
                && Replay.Same([.. pair.First.Select(e => e.Event)], pair.Second.Events));
        return allMine ? since.Count : -1;
    }

    /// <returns>The last sequence number; null when another turn came in between.</returns>
    private async Task<long?> AppendAsync(
        string caseId, long last, ImmutableArray<BroughtTurn> made, CancellationToken cancel)
    {
        foreach (BroughtTurn turn in made)
        {
            var result = await store.AppendAsync(caseId, last, turn.TurnId, turn.Events, cancel);
            if (result is not AppendResult.Appended) return null;
            last += turn.Events.Length;
        }

        return last;
    }
}
