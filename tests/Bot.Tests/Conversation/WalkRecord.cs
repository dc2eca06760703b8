using System.Collections.Immutable;
using DxAssistant.Conversation.State;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>What a walk asked, in order, and where it ended.</summary>
/// <param name="Steps">Ids of checks and repairs.</param>
internal sealed record WalkRecord(ImmutableArray<string> Steps, CaseState End)
{
    /// <summary>The fault whose repair was verified; null when none was.</summary>
    public string? Proven => End.Repairs is [.., { Works: true } last] ? last.Fault : null;

    /// <summary>How many repairs were made for nothing.</summary>
    public int WrongRepairs => End.Repairs.Count(repair => !repair.Works);

    /// <summary>The place of a step; the end of the walk when it was not asked.</summary>
    public int PlaceOf(string step) => Steps.IndexOf(step) is >= 0 and int place ? place : Steps.Length;

    /// <summary>The first place of any of the steps.</summary>
    public int FirstOf(params ReadOnlySpan<string> steps)
    {
        int first = Steps.Length;
        foreach (string step in steps) first = Math.Min(first, PlaceOf(step));
        return first;
    }
}
