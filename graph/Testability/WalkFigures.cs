using System.Collections.Immutable;

namespace DxAssistant.Graph.Testability;

/// <summary>How the walks of a problem go when a policy decides them.</summary>
/// <param name="IsExact">True when everything that can happen was gone through; else walks were played.</param>
/// <param name="Count">Positions gone through, or walks played.</param>
/// <param name="Minutes">Spent at the unit; the price of parts changed for nothing is not in them.</param>
/// <param name="RepairsInVain">Repairs that did not help.</param>
/// <param name="PartsInVain">Of these, those that changed a part.</param>
/// <param name="HandedOver">Share of walks that end with handing the case over.</param>
/// <param name="IsolatedTo">
/// Share of walks that end with a verified repair after at most 1, 2, 3 repairs tried (IEEE 1522, fraction isolated;
/// from memory).
/// </param>
public sealed record WalkFigures(
    bool IsExact, int Count, Estimate Checks, Estimate Minutes, Estimate RepairsInVain, Estimate PartsInVain,
    Estimate HandedOver,
    ImmutableArray<Estimate> IsolatedTo)
{
    /// <summary>The most repairs that <see cref="IsolatedTo"/> counts to.</summary>
    public const int MostRepairs = 3;

    /// <param name="walks">At least one.</param>
    internal static WalkFigures Of(ImmutableArray<SessionTally> walks) => new(
        IsExact: false, walks.Length, Often(walks, walk => walk.Checks),
        Estimate.MeanOfAmounts([.. walks.Select(walk => walk.Minutes)]),
        Often(walks, walk => walk.RepairsInVain), Often(walks, walk => walk.PartsInVain),
        Share(walks, walk => !walk.Mended),
        [
            .. Enumerable.Range(1, MostRepairs)
                .Select(most => Share(walks, walk => walk.Mended && walk.Repairs <= most)),
        ]);

    /// <summary>The figures of walks that begin at several problems.</summary>
    /// <param name="parts">The weights sum to 1.</param>
    internal static WalkFigures Mixture(ImmutableArray<(double Weight, WalkFigures Walks)> parts) => new(
        parts.All(part => part.Walks.IsExact), parts.Sum(part => part.Walks.Count),
        Estimate.MixtureOfCounts(Each(parts, walks => walks.Checks)),
        Estimate.MixtureOfAmounts(parts.Select(part => (part.Weight, part.Walks.Minutes))),
        Estimate.MixtureOfCounts(Each(parts, walks => walks.RepairsInVain)),
        Estimate.MixtureOfCounts(Each(parts, walks => walks.PartsInVain)),
        Estimate.MixtureOfShares(Each(parts, walks => walks.HandedOver)),
        [.. Enumerable.Range(0, MostRepairs)
            .Select(place => Estimate.MixtureOfShares(Each(parts, walks => walks.IsolatedTo[place])))]);

    private static Estimate Often(ImmutableArray<SessionTally> walks, Func<SessionTally, int> times) =>
        Estimate.MeanOfCounts([.. walks.Select(walk => (double)times(walk))]);

    private static Estimate Share(ImmutableArray<SessionTally> walks, Func<SessionTally, bool> counts) =>
        Estimate.ShareOf(walks.Count(counts), walks.Length);

    private static ImmutableArray<(double Weight, Estimate Figure, double Draws)> Each(
        ImmutableArray<(double Weight, WalkFigures Walks)> parts, Func<WalkFigures, Estimate> figure) =>
        [.. parts.Select(part => (part.Weight, figure(part.Walks),
            part.Walks.IsExact ? double.PositiveInfinity : part.Walks.Count))];
}
