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
    bool IsExact, int Count, Estimate Checks, Estimate Minutes, Estimate RepairsInVain, Estimate PartsInVain, Estimate HandedOver,
    ImmutableArray<Estimate> IsolatedTo)
{
    /// <summary>The most repairs that <see cref="IsolatedTo"/> counts to.</summary>
    public const int MostRepairs = 3;

    /// <param name="walks">At least one.</param>
    internal static WalkFigures Of(ImmutableArray<SessionTally> walks) => new(
        IsExact: false, walks.Length, Mean(walks, walk => walk.Checks), Mean(walks, walk => walk.Minutes),
        Mean(walks, walk => walk.RepairsInVain), Mean(walks, walk => walk.PartsInVain), Share(walks, walk => !walk.Mended),
        [
            .. Enumerable.Range(1, MostRepairs)
                .Select(most => Share(walks, walk => walk.Mended && walk.Repairs <= most)),
        ]);

    /// <summary>The figures of walks that begin at several problems.</summary>
    /// <param name="parts">The weights sum to 1.</param>
    internal static WalkFigures Mixture(ImmutableArray<(double Weight, WalkFigures Walks)> parts) => new(
        parts.All(part => part.Walks.IsExact), parts.Sum(part => part.Walks.Count),
        Mixed(parts, walks => walks.Checks), Mixed(parts, walks => walks.Minutes),
        Mixed(parts, walks => walks.RepairsInVain), Mixed(parts, walks => walks.PartsInVain), Mixed(parts, walks => walks.HandedOver),
        [.. Enumerable.Range(0, MostRepairs).Select(place => Mixed(parts, walks => walks.IsolatedTo[place]))]);

    private static Estimate Mean(ImmutableArray<SessionTally> walks, Func<SessionTally, double> value) =>
        Estimate.MeanOf([.. walks.Select(value)]);

    private static Estimate Share(ImmutableArray<SessionTally> walks, Func<SessionTally, bool> counts) =>
        Estimate.ShareOf(walks.Count(counts), walks.Length);

    private static Estimate Mixed(
        ImmutableArray<(double Weight, WalkFigures Walks)> parts, Func<WalkFigures, Estimate> figure) =>
        Estimate.Mixture(parts.Select(part => (part.Weight, figure(part.Walks))));
}
