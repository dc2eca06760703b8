namespace DxAssistant.Cases;

/// <summary>One case in a list of cases.</summary>
/// <param name="Title">The first words or code the person gave.</param>
/// <param name="OpenedAt">When its first event was stored, UTC.</param>
/// <param name="LastAt">When its last event was stored, UTC.</param>
public sealed record CaseLine(string Id, string Title, DateTimeOffset OpenedAt, DateTimeOffset LastAt);
