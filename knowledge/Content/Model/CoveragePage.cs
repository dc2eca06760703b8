using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>The terms on which parts and work of a series are paid.</summary>
/// <param name="Start">Which day the months run from.</param>
/// <param name="RegisterDays">Days after the start in which a unit must be registered for the longer months.</param>
/// <param name="LabourMonths">How long work is paid.</param>
/// <param name="EveryOtherPart">The term of parts in no class.</param>
/// <param name="TermOfPart">By the part's name.</param>
/// <param name="Labour">By repair; a repair that is not listed is paid no work.</param>
/// <param name="Excluded">Faults that are not paid, with the reason.</param>
/// <param name="Claim">What the warranty desk wants to see.</param>
public sealed record CoveragePage(
    string Id,
    Passage Title,
    Passage Summary,
    CoverageStart Start,
    int RegisterDays,
    int LabourMonths,
    PartTerm EveryOtherPart,
    ImmutableSortedDictionary<string, PartTerm> TermOfPart,
    ImmutableSortedDictionary<RepairId, LabourAllowance> Labour,
    ImmutableSortedDictionary<FaultId, Passage> Excluded,
    ImmutableArray<Passage> Claim,
    ImmutableArray<Source> Sources)
{
    /// <summary>
    /// How likely a fault has to be, by its evidence, for a claim to be ready by itself; 0 to 1. The page gives
    /// per cent.
    /// </summary>
    public required double ClaimBelief { get; init; }

    /// <summary>The term of a part, by its class or as every other part.</summary>
    public PartTerm TermOf(string part) => TermOfPart.GetValueOrDefault(part, EveryOtherPart);
}
