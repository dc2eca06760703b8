using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>What the unit shows or the customer reports.</summary>
public sealed record SymptomPage(SymptomId Id, Passage Title, Passage Summary, ImmutableArray<Passage> SaidAs)
{
    /// <summary>
    /// Access states of which one must give a result before anything is done in another: what smells burnt is looked at
    /// dead.
    /// </summary>
    public ImmutableArray<AccessId> FirstIn { get; init; } = [];

    /// <summary>Hazards told before the first step to another access state.</summary>
    public ImmutableArray<CautionPage> Cautions { get; init; } = [];

    /// <summary>What danger the symptom is a sign of itself; null when of none.</summary>
    public DangerKind? Danger { get; init; }

    /// <summary>The mode in which it shows, cooling or heating; null when in any.</summary>
    public string? Mode { get; init; }

    /// <summary>Whether the unit stays off until a technician has looked at it.</summary>
    public bool StaysOff { get; init; }
}
