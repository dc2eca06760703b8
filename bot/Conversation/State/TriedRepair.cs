using System.Collections.Immutable;

namespace DxAssistant.Conversation.State;

/// <summary>A repair that was made.</summary>
/// <param name="Fault">The fault it was made for.</param>
/// <param name="Works">Whether the unit worked afterwards.</param>
public sealed record TriedRepair(string Repair, string Fault, bool Works)
{
    /// <summary>The other faults that it may have been as well; likeliest first.</summary>
    public ImmutableArray<string> OrFaults { get; init; } = [];

    /// <summary>
    /// The faults still in question where the unit works though none was proven, likeliest first; null where the cure
    /// proves one.
    /// </summary>
    public ImmutableArray<string>? InQuestion { get; init; }

    /// <summary>
    /// The check that shows another fault, where this one is put right and no trial told of it alone; null where the
    /// repair cured or failed.
    /// </summary>
    public string? Beside { get; init; }

    /// <summary>Whether the unit works and that proves the fault.</summary>
    public bool Proves => Works && InQuestion is null;
}
