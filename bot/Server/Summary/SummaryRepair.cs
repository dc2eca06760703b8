namespace DxAssistant.Server.Summary;

/// <summary>One repair that was made.</summary>
/// <param name="Fault">The fault it was made for; null until it was tried out.</param>
/// <param name="Works">Whether the unit worked afterwards; null until it was tried out.</param>
/// <param name="TriedAt">When that was stored, UTC.</param>
internal sealed record SummaryRepair(string Title, string? Fault, bool? Works, DateTimeOffset? TriedAt);
