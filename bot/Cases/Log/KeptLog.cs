using System.Collections.Immutable;

namespace DxAssistant.Cases.Log;

/// <summary>The log of one case as a store keeps it, not yet checked.</summary>
/// <param name="Last">The last sequence number that its turns claim, kept apart from the rows: fewer rows than that
/// means that some were taken away from the end.</param>
public sealed record KeptLog(ImmutableArray<LogRow> Rows, long Last)
{
    /// <summary>A case that is not there.</summary>
    public static KeptLog None { get; } = new([], 0);

    /// <summary>The events, checked.</summary>
    /// <exception cref="CaseFileException">A row was altered, is missing, or is not an event this program
    /// knows.</exception>
    public ImmutableArray<StoredEvent> Open(string caseId)
    {
        var events = Chain.Open(caseId, Rows);
        return events.Length >= Last ? events : throw Chain.Altered(caseId, events.Length + 1, "it is missing");
    }

    /// <summary>The stretches of rows that are one turn each.</summary>
    internal IEnumerable<ImmutableArray<LogRow>> Turns() =>
        Rows.GroupBy(row => row.TurnId, StringComparer.Ordinal).Select(turn => turn.ToImmutableArray());
}
