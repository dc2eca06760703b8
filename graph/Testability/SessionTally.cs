using System.Collections.Immutable;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Testability;

/// <summary>How one session went.</summary>
/// <param name="Repairs">Repairs tried; handing the case over is none.</param>
/// <param name="Minutes">Spent at the unit.</param>
/// <param name="Mended">False when the case was handed over.</param>
public sealed record SessionTally(int Checks, int Repairs, double Minutes, bool Mended)
{
    /// <summary>Repairs that did not help.</summary>
    public int RepairsInVain => Mended ? Repairs - 1 : Repairs;

    /// <summary>Of these, those that changed a part.</summary>
    public int PartsInVain { get; init; }

    /// <summary>Minutes with the price of parts changed for nothing and of faults that watching left unfound.</summary>
    public double Priced { get; init; }

    /// <summary>Each time a rule laid over the plan chose a step.</summary>
    public ImmutableArray<RuleLoss> Losses { get; init; } = [];

    /// <summary>Each time the limit of a rule kept it from choosing.</summary>
    public ImmutableArray<string> HeldBack { get; init; } = [];
}
