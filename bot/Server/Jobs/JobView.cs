using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Cases.Jobs;
using DxAssistant.Conversation.State;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Jobs;

/// <summary>A job as its page shows it.</summary>
/// <param name="Ended">How the case ended; null while it is open.</param>
/// <param name="Said">The series that the walk knows the unit by; null while it knows none.</param>
/// <param name="Series">All series that a unit may be of.</param>
internal sealed record JobView(
    string Case, long Last, Job Job, string? Ended, string? Said, ImmutableArray<JobView.Choice> Series)
{
    /// <param name="Serial">A serial number of it; null when its numbers have no pattern.</param>
    internal sealed record Choice(string Id, string Title, string? Serial);

    /// <param name="log">The whole log of the case; not empty.</param>
    public static JobView Of(string id, ImmutableArray<StoredEvent> log, InUse now)
    {
        var state = Fold.Apply(CaseState.New, log.Select(stored => stored.Event));
        return new JobView(id, log[^1].Sequence, Job.Of(log), state.ClosedHow, state.Series, Choices(now));
    }

    private static ImmutableArray<Choice> Choices(InUse now) => now.Library is not { } library ? [] :
    [
        .. library.Series.Values.Select(page => new Choice(page.Id, page.Title.Text, page.SerialExample))
            .OrderBy(choice => choice.Title, StringComparer.Ordinal),
    ];
}
