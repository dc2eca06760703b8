using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>The faults in question that one repair cures: how sure the repair is, and how sure each of them.</summary>
/// <param name="All">Likeliest first.</param>
/// <param name="NoneOfThese">The probability that it is no fault of the content.</param>
internal sealed record CuredFaults(ImmutableArray<RankedFault> All, double NoneOfThese)
{
    /// <summary>The probability from which a fault counts as found rather than likely; common practice, no source.</summary>
    private const double Found = 0.95;

    // The probability from which a second fault with the same repair is named; common practice, no source.
    private const double WorthNaming = 0.05;

    private const double EvenChance = 0.5;

    public static CuredFaults Of(Belief belief, Repair repair) => new(
        [.. belief.Ranked.Where(ranked => ranked.Probability > 0 && repair.Fixes.Contains(ranked.Id))],
        belief.ProbabilityOf(FaultId.NoneOfThese));

    public RankedFault Likeliest => All[0];

    /// <summary>How probable it is that the repair cures.</summary>
    public double Share => All.Sum(ranked => ranked.Probability);

    public bool IsFound => Likeliest.Probability >= Found;

    /// <summary>The repair is right beyond doubt, but not which of its faults is there.</summary>
    public bool IsRepairAloneSure => !IsFound && Share >= Found;

    /// <summary>Whether the likeliest may be called most likely.</summary>
    public bool IsLikely => Likeliest.Probability >= EvenChance;

    public bool NoneLeads => NoneOfThese > Likeliest.Probability;

    /// <summary>The faults besides the likeliest that have a share worth naming; where the repair alone is sure, at least one.</summary>
    public ImmutableArray<RankedFault> Others =>
        [.. All.Skip(1).Where((ranked, place) => ranked.Probability >= WorthNaming || (place == 0 && IsRepairAloneSure))];

    /// <summary>The faults that may be there in place of the likeliest, when that one is not found.</summary>
    public ImmutableArray<RankedFault> NotToldApart => All.IsEmpty || IsFound ? [] : Others;
}
