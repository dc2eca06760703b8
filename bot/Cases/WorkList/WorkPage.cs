using System.Collections.Immutable;

namespace DxAssistant.Cases.WorkList;

/// <summary>A page of a work list.</summary>
/// <param name="Next">
/// Where the next page begins; null when this is the last one. A case that is added to meanwhile moves in the
/// list: a later page may miss it, and the next look from the front shows it.
/// </param>
public sealed record WorkPage(ImmutableArray<WorkLine> Lines, WorkPlace? Next)
{
    /// <summary>Cuts what was read, one line more than wanted, to a page.</summary>
    internal static WorkPage Of(ImmutableArray<(WorkLine Line, long At)> read, WorkQuery query) => new(
        [.. read.Take(query.Limit).Select(one => one.Line)],
        read.Length > query.Limit
            ? new WorkPlace(read[query.Limit - 1].At, KeyOf(read[query.Limit - 1].Line, query.Order))
            : null);

    internal static string? KeyOf(WorkLine line, WorkOrder order) => order switch
    {
        WorkOrder.Series => line.Series,
        WorkOrder.Fault => line.Fault,
        _ => null,
    };
}
