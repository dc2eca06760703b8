using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Summary;

/// <summary>A case on one page: what was found, how it was proven, what was done.</summary>
/// <param name="LastAt">When the last turn was stored, UTC.</param>
/// <param name="Versions">The versions of the content it was walked on, first to last.</param>
/// <param name="Parts">One for each start and each fault; the last is the one at hand.</param>
internal sealed record CaseSummary(
    string Id, DateTimeOffset OpenedAt, DateTimeOffset LastAt, ImmutableArray<string> Versions, SheetHead Head,
    ImmutableArray<SummaryPart> Parts)
{
    /// <param name="log">The whole log of the case; not empty.</param>
    /// <param name="narrowing">Draws how the faults in question of a case narrowed.</param>
    public static CaseSummary Of(
        string id, ImmutableArray<StoredEvent> log, TitleBook titles, Func<CaseState, Picture?> narrowing)
    {
        var walk = new SummaryWalk(titles, narrowing);
        foreach (var stored in log) walk.Take(stored);
        return new CaseSummary(
            id, log[0].At, log[^1].At, walk.Versions, SheetHead.Of(walk.State, titles), walk.Parts());
    }
}
