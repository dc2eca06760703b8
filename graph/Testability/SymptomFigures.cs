using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Testability;

/// <summary>How well a symptom can be walked to its fault (terms of IEEE 1522, from memory).</summary>
/// <param name="Weight">How often the symptom is met against the others, on the scale of the faults' weights.</param>
/// <param name="Faults">How many faults are in question.</param>
/// <param name="Detected">Share of the faults, by probability, to which some check gives a row of its own.</param>
/// <param name="Groups">What no check tells apart, groups of one fault included; by their first fault.</param>
/// <param name="LookAlikes">
/// Of each fault the faults that may still be taken for it, in more than one of twenty cases, when all checks were
/// done; itself included.
/// </param>
/// <param name="Mistaken">
/// The pairs of faults that are most easily mistaken for one another, all checks done, the worst first; not those that
/// one repair cures.
/// </param>
/// <param name="Walks">How the walks go; null when there was nothing to walk.</param>
/// <param name="LeastMinutes">
/// No policy takes fewer expected minutes, parts changed for nothing priced in; null when the policy cannot say.
/// </param>
/// <param name="PricedMinutes">The policy's minutes with the price of parts changed for nothing; null as above.</param>
/// <param name="Laid">What rules laid over the plan cost; null when none are.</param>
public sealed record SymptomFigures(
    SymptomId Symptom, double Weight, int Faults, double Detected, ImmutableArray<AmbiguityGroup> Groups,
    ImmutableArray<AmbiguityGroup> LookAlikes, ImmutableArray<MistakenPair> Mistaken,
    WalkFigures? Walks, double? LeastMinutes, double? PricedMinutes,
    LaidFigures? Laid)
{
    /// <summary>The most pairs that <see cref="Mistaken"/> names.</summary>
    public const int MostMistaken = 3;

    /// <summary>
    /// Share of the faults, by probability, whose group at most so many repairs cure: what the checks could reach.
    /// </summary>
    public double IsolatableTo(int repairs) => ShareCuredBy(repairs, Groups);

    /// <summary>The same of the faults that look alike, as checks show now this, now that under a fault.</summary>
    public double SurelyIsolatableTo(int repairs) => ShareCuredBy(repairs, LookAlikes);

    /// <summary>How many faults look like the one present, itself included, on average.</summary>
    public double MeanGroup => MeanSize(Groups);

    /// <summary>How many faults may be taken for the one present, itself included, on average.</summary>
    public double MeanLookAlikes => MeanSize(LookAlikes);

    private static double MeanSize(ImmutableArray<AmbiguityGroup> groups) =>
        groups.Sum(group => group.Probability * group.Faults.Length);

    private static double ShareCuredBy(int repairs, ImmutableArray<AmbiguityGroup> groups) =>
        groups.Where(group => !group.Repairs.IsEmpty && group.Repairs.Length <= repairs)
            .Sum(group => group.Probability);
}
