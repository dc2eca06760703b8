using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>The faults in question that one repair cures: how sure the repair is, and how sure each of them.</summary>
/// <param name="All">Likeliest first.</param>
/// <param name="NoneOfThese">The probability that it is no fault of the content.</param>
/// <param name="Settings">From which probability a fault is found, and named.</param>
internal sealed record CuredFaults(ImmutableArray<RankedFault> All, double NoneOfThese, WalkSettings Settings)
{
    // No setting: "most likely" means more likely than not.
    private const double EvenChance = 0.5;

    public static CuredFaults Of(Belief belief, Repair repair, WalkSettings settings) => new(
        [.. belief.Ranked.Where(ranked => ranked.Probability > 0 && repair.Fixes.Contains(ranked.Id))],
        belief.ProbabilityOf(FaultId.NoneOfThese), settings);

    public RankedFault Likeliest => All[0];

    /// <summary>How probable it is that the repair cures.</summary>
    public double Share => All.Sum(ranked => ranked.Probability);

    public bool IsFound => Likeliest.Probability >= Settings.Found;

    /// <summary>The repair is right beyond doubt, but not which of its faults is there.</summary>
    public bool IsRepairAloneSure => !IsFound && Share >= Settings.Found;

    /// <summary>Whether the likeliest may be called most likely.</summary>
    public bool IsLikely => Likeliest.Probability >= EvenChance;

    /// <summary>
    /// Whether the repair is tried on a guess: it is more likely none of its faults than one of them.
    /// </summary>
    public bool IsGuess => Share < EvenChance;

    public bool NoneLeads => NoneOfThese > Likeliest.Probability;

    /// <summary>
    /// The faults besides the likeliest that have a share worth naming; where the repair alone is sure, at least one.
    /// </summary>
    public ImmutableArray<RankedFault> Others =>
        [.. All.Skip(1)
            .Where((ranked, place) => ranked.Probability >= Settings.NamedBeside || (place == 0 && IsRepairAloneSure))];

    /// <summary>The faults that may be there in place of the likeliest, when that one is not found.</summary>
    public ImmutableArray<RankedFault> NotToldApart => All.IsEmpty || IsFound ? [] : Others;
}
