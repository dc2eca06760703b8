using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Cases.Brought;

namespace DxAssistant.Server.Offline;

/// <summary>The log of a case for a page that takes it along.</summary>
internal sealed record CaseLog(long Last, ImmutableArray<BroughtTurn> Turns)
{
    public static CaseLog Of(ImmutableArray<StoredEvent> log) => new(
        log[^1].Sequence,
        [.. log.GroupBy(e => e.TurnId).Select(turn => new BroughtTurn(turn.Key, [.. turn.Select(e => e.Event)]))]);
}
