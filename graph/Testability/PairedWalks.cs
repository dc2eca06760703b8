using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Testability;

/// <summary>Walks of two problems on the same units: what is chance on both sides cancels.</summary>
/// <param name="Minutes">How many minutes more a walk of the second takes.</param>
/// <param name="RepairsInVain">How many repairs in vain more it has.</param>
/// <param name="MendedFirst">By how much the share mended by the first repair rises.</param>
public sealed record PairedWalks(WalkFigures Before, WalkFigures After, Estimate Minutes, Estimate RepairsInVain,
    Estimate MendedFirst)
{
    /// <summary>Plays both.</summary>
    /// <param name="walks">1 or more.</param>
    public static PairedWalks Play(
        (SequencingProblem Problem, IPolicy Policy) before, (SequencingProblem Problem, IPolicy Policy) after,
        int walks, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(walks, 1);
        var draws = new Draws(seed);
        var units = new SharedUnits(before.Problem, after.Problem);
        SessionSimulation first = new(before.Problem, before.Policy, draws), second =
            new(after.Problem, after.Policy, draws);
        return Of([.. Enumerable.Range(0, walks).Select(_ => Play(first, second, units.Next(draws), draws.Next()))]);
    }

    private static (SessionTally Before, SessionTally After) Play(
        SessionSimulation first, SessionSimulation second, (FaultId Before, FaultId After) fault, ulong unit) =>
        (first.Play(fault.Before, unit), second.Play(fault.After, unit));

    private static PairedWalks Of(ImmutableArray<(SessionTally Before, SessionTally After)> walks)
    {
        Estimate Rise(Func<SessionTally, double> figure) =>
            Estimate.MeanOf([.. walks.Select(walk => figure(walk.After) - figure(walk.Before))]);
        return new PairedWalks(
            WalkFigures.Of([.. walks.Select(walk => walk.Before)]),
            WalkFigures.Of([.. walks.Select(walk => walk.After)]),
            Rise(walk => walk.Minutes), Rise(walk => walk.RepairsInVain),
            Rise(walk => walk is { Mended: true, Repairs: 1 } ? 1 : 0));
    }
}
