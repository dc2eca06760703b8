using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Testability;

/// <summary>How well a symptom can be walked to its fault (terms of IEEE 1522, from memory).</summary>
/// <param name="Faults">How many faults are in question.</param>
/// <param name="Detected">Share of the faults, by probability, to which some check gives a row of its own.</param>
/// <param name="Groups">What no check tells apart, groups of one fault included; by their first fault.</param>
/// <param name="Sessions">The sessions played; empty when there was nothing to play.</param>
public sealed record SymptomFigures(
    SymptomId Symptom, int Faults, double Detected, ImmutableArray<AmbiguityGroup> Groups,
    ImmutableArray<SessionTally> Sessions)
{
    /// <summary>
    /// Share of the faults, by probability, whose group at most so many repairs cure: what the checks could reach.
    /// </summary>
    public double IsolatableTo(int repairs) =>
        Groups.Where(group => !group.Repairs.IsEmpty && group.Repairs.Length <= repairs)
            .Sum(group => group.Probability);

    /// <summary>Share of the sessions that ended with a repair, at most so many being tried.</summary>
    public double IsolatedTo(int repairs) => Share(session => session.Mended && session.Repairs <= repairs);

    /// <summary>Share of the sessions that ended with handing the case over.</summary>
    public double HandedOver => Share(session => !session.Mended);

    public double MeanChecks => Mean(session => session.Checks);
    public double MeanMinutes => Mean(session => session.Minutes);
    public double MeanRepairsInVain => Mean(session => session.RepairsInVain);

    private double Share(Func<SessionTally, bool> counts) => Mean(session => counts(session) ? 1 : 0);

    private double Mean(Func<SessionTally, double> value) => Sessions.IsEmpty ? 0 : Sessions.Average(value);
}
