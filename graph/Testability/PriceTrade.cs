using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Testability;

/// <summary>
/// What minutes and parts trade for: the same units walked with parts changed for nothing at several prices.
/// </summary>
/// <param name="own">The problem at the graph's own price, and what walks it.</param>
/// <param name="walks">1 or more.</param>
public sealed class PriceTrade((SequencingProblem Problem, IPolicy Policy) own, int walks, ulong seed)
{
    private readonly ImmutableHashSet<RepairId> parts =
        [.. own.Problem.Repairs.Where(repair => repair.WrongMinutes > 0).Select(repair => repair.Id)];

    private readonly Lazy<ImmutableArray<SessionTally>> atOwn = new(() => Played(own, null, walks, seed));

    /// <summary>The walks at another price.</summary>
    /// <param name="factor">What the price was multiplied with.</param>
    /// <param name="priced">The same faults and checks, and what walks them at that price.</param>
    public PricePoint At(double factor, (SequencingProblem Problem, IPolicy Policy) priced)
    {
        ImmutableArray<SessionTally> played = factor == 1 ? atOwn.Value : Played(priced, parts, walks, seed);
        Estimate Rise(Func<SessionTally, double> figure) =>
            Estimate.MeanOf([.. played.Zip(atOwn.Value, (now, before) => figure(now) - figure(before))]);
        return new PricePoint(
            factor, walks, Estimate.MeanOfAmounts([.. played.Select(walk => walk.Minutes)]),
            Estimate.MeanOfCounts([.. played.Select(walk => (double)walk.PartsInVain)]), Rise(walk => walk.Minutes),
            Rise(walk => -walk.PartsInVain));
    }

    // A unit is its number: the same for every price.
    private static ImmutableArray<SessionTally> Played(
        (SequencingProblem Problem, IPolicy Policy) priced, ImmutableHashSet<RepairId>? parts, int walks, ulong seed)
    {
        var draws = new Draws(seed);
        var simulation = new SessionSimulation(priced.Problem, priced.Policy, draws) { Parts = parts };
        return [.. Enumerable.Range(0, walks).Select(_ => simulation.Play())];
    }
}
