using System.Collections.Immutable;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>Pages somebody handed in for review.</summary>
/// <param name="Number">Counts from 1.</param>
/// <param name="By">The account, or what stands for the one person at this machine.</param>
/// <param name="Note">What it is for, in their words.</param>
/// <param name="Errors">Errors that the pages would have brought when it was handed in.</param>
internal sealed record Proposal(
    int Number, string By, DateTimeOffset At, string Note, ImmutableArray<ProposedPage> Pages, int Errors)
{
    /// <summary>When it was taken back; null while it stands.</summary>
    public DateTimeOffset? TakenBackAt { get; init; }

    /// <summary>By which the same request sent again finds it; null in proposals from before there was one.</summary>
    public string? Mark { get; init; }

    /// <summary>Who took it back.</summary>
    public string? TakenBackBy { get; init; }
}
