namespace DxAssistant.Cases.WorkList;

/// <summary>Which cases a work list shows.</summary>
/// <param name="Text">Words, or their beginnings, that all stand somewhere in the log; empty for any case.</param>
/// <param name="Series">Only this series; null for all.</param>
/// <param name="Fault">Only cases in which this fault is the likeliest or was proven; null for all.</param>
/// <param name="Open">Only open or only ended cases; null for both.</param>
/// <param name="Limit">How many at most; 1 or more.</param>
/// <param name="After">
/// Where the page begins, as <see cref="WorkPage.Next"/> of the same search gave it; null for the first page.
/// </param>
public sealed record WorkQuery(
    string Text = "", string? Series = null, string? Fault = null, bool? Open = null,
    WorkOrder Order = WorkOrder.Newest, int Limit = 100, WorkPlace? After = null);
