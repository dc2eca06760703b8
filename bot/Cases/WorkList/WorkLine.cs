namespace DxAssistant.Cases.WorkList;

/// <summary>One case in a work list.</summary>
/// <param name="Title">The first words or code the person gave; empty while there are none.</param>
/// <param name="Series">Null while it is not known.</param>
/// <param name="Fault">The likeliest fault, or the one that was proven; null while nothing is in question.</param>
/// <param name="Ended">How it ended; null while it is open.</param>
public sealed record WorkLine(
    string Id, string Title, string? Series, string? Fault, string? Ended, DateTimeOffset OpenedAt,
    DateTimeOffset LastAt);
