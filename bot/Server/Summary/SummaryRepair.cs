namespace DxAssistant.Server.Summary;

/// <summary>One repair that was made.</summary>
/// <param name="Fault">The fault it was made for; null until it was tried out or another showed.</param>
/// <param name="Works">
/// Whether the unit worked afterwards; null until it was tried out, and where another fault showed beside the one put
/// right.
/// </param>
/// <param name="TriedAt">When that was stored, UTC.</param>
/// <param name="Beside">The check that showed another fault beside the one put right; null where none did.</param>
internal sealed record SummaryRepair(string Title, string? Fault, bool? Works, DateTimeOffset? TriedAt,
    string? Beside = null);
