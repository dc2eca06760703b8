using System.Collections.Immutable;

namespace DxAssistant.Cases.WorkList;

/// <summary>
/// A part of a work list that one index holds in order, in SQL that SQLite and PostgreSQL read alike. A list by series
/// is first the rest of the series where the page begins, then the others, then the cases without one: asked for all at
/// once, every case would have to be sorted.
/// </summary>
/// <param name="Where">With <c>{0}</c>, <c>{1}</c> for the names of the values.</param>
internal sealed record WorkPart(string Where, string Order, ImmutableArray<object> Values)
{
    private const string Newest = "last_event DESC";

    /// <summary>The parts of a list from where the page begins, in order.</summary>
    public static ImmutableArray<WorkPart> Of(WorkOrder order, WorkPlace? after) => order switch
    {
        WorkOrder.Series => By("series", after),
        WorkOrder.Fault => By("fault", after),
        WorkOrder.Oldest => [new("last_event > {0}", "last_event", [after?.At ?? -1L])],
        _ => [new("last_event < {0}", Newest, [after?.At ?? long.MaxValue])],
    };

    private static ImmutableArray<WorkPart> By(string column, WorkPlace? after)
    {
        var without = new WorkPart($"{column} IS NULL AND last_event < {{0}}", Newest,
            [after is { Key: null } place ? place.At : long.MaxValue]);
        return after switch
        {
            null => [new($"{column} IS NOT NULL", $"{column}, {Newest}", []), without],
            { Key: { } key } =>
                [new($"{column} = {{0}} AND last_event < {{1}}", Newest, [key, after.At]),
                    new($"{column} > {{0}}", $"{column}, {Newest}", [key]), without],
            _ => [without],
        };
    }
}
