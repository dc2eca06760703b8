using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;

namespace DxAssistant.Cases.Claims;

/// <summary>The part of a case that a claim is about, replayed from its log.</summary>
/// <param name="State">Where the case stood at the end of that part.</param>
/// <param name="BeforeRepair">Where it stood before the part was changed: the evidence that led there.</param>
/// <param name="Cured">The repair after which the unit worked; null while there is none.</param>
internal sealed record ClaimedWalk(CaseState State, CaseState BeforeRepair, TriedRepair? Cured, SeenFigures Figures)
{
    /// <summary>The last part of the case in which a repair cured a fault; else where the case stands.</summary>
    public static ClaimedWalk Of(ImmutableArray<StoredEvent> log)
    {
        var ends = log.Where(stored => stored.Event is SecondFaultBegun or StartedOver or Reopened)
            .Select(stored => (int)stored.Sequence - 1).Append(log.Length).ToList();
        int cured = ends.FindLastIndex(end => Cure(Replay(log, end)) is not null);
        return At(log, cured < 0 ? log.Length : ends[cured]);
    }

    private static ClaimedWalk At(ImmutableArray<StoredEvent> log, int end)
    {
        var figures = new SeenFigures();
        foreach (var stored in log[..end]) figures.Take(stored);
        var state = Replay(log, end);
        string? repair = Cure(state)?.Repair ?? state.Unverified;
        int made = repair is null ? -1 : Made(log, end, repair);
        return new ClaimedWalk(state, made < 0 ? state : Replay(log, made), Cure(state), figures);
    }

    private static TriedRepair? Cure(CaseState state) => state.Repairs.LastOrDefault(tried => tried.Works);

    // Work that did not hold and was redone was made when it was first done: what was read after that is no proof for
    // it.
    private static int Made(ImmutableArray<StoredEvent> log, int end, string repair)
    {
        int made = -1;
        for (int i = end - 1; i >= 0 && !(made >= 0 && log[i].Event is RepairVerified or FaultBeside); i--)
            if (log[i].Event is RepairDone done && done.Repair == repair) made = i;
        return made;
    }

    private static CaseState Replay(ImmutableArray<StoredEvent> log, int end) =>
        Fold.Apply(CaseState.New, log.Take(end).Select(stored => stored.Event));
}
