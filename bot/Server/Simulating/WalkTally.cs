using System.Collections.Immutable;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Server.Simulating;

/// <summary>The figures of several simulated walks.</summary>
/// <param name="Proven">Walks that ended at the true fault, of those in which this person can.</param>
/// <param name="Within">Walks of persons who can repair the true fault: those that were not booked.</param>
/// <param name="Named">Booked walks whose last words name the true fault.</param>
/// <param name="Missed">
/// Walks that ended with advice, as nothing found or intermittent, although there was a fault.
/// </param>
/// <param name="VisitsInVain">
/// Walks left to a person with another role although this one could have repaired it.
/// </param>
/// <param name="Stuck">Walks without an end.</param>
/// <param name="WrongParts">Parts changed for nothing.</param>
/// <param name="WrongWalks">Walks in which a part was changed for nothing.</param>
/// <param name="WrongPartsWithin">Parts changed for nothing in walks that were not booked.</param>
/// <param name="WrongWalksWithin">Walks that were not booked and in which a part was changed for nothing.</param>
/// <param name="MinutesEither">Half the width of the 95 % interval about the mean minutes.</param>
internal sealed record WalkTally(
    int Walks, int Within, int Proven, int Booked, int Named, int Missed, int VisitsInVain, int Stuck, int WrongParts,
    int WrongWalks,
    int WrongPartsWithin, int WrongWalksWithin, double Minutes, double MinutesEither, double Checks)
{
    // The normal quantile of 97.5 %.
    private const double Z = 1.959963984540054;

    public double ProvenShare => Within == 0 ? 1 : (double)Proven / Within;

    public double WrongPartsPerWalk => Walks == 0 ? 0 : (double)WrongParts / Walks;

    /// <summary>
    /// The same of walks that were not booked: a walk that is soon left to others has little time to change a part.
    /// </summary>
    public double WrongPartsPerWalkWithin => Within == 0 ? 0 : (double)WrongPartsWithin / Within;

    public static WalkTally Of(ImmutableArray<SimulatedWalk> walks)
    {
        double minutes = walks.Length == 0 ? 0 : walks.Average(walk => walk.Minutes);
        ImmutableArray<SimulatedWalk> within = [.. walks.Where(walk => walk.End != WalkEnd.Booked)];
        return new WalkTally(
            walks.Length,
            within.Length,
            walks.Count(walk => walk.End == WalkEnd.Proven),
            walks.Count(walk => walk.End == WalkEnd.Booked),
            walks.Count(walk => walk is { End: WalkEnd.Booked, IsNamed: true }),
            walks.Count(walk => walk.End == WalkEnd.Missed),
            walks.Count(walk => walk.End == WalkEnd.BookedForNothing),
            walks.Count(walk => walk.End == WalkEnd.Stuck),
            walks.Sum(walk => walk.WrongParts),
            walks.Count(walk => walk.WrongParts > 0),
            within.Sum(walk => walk.WrongParts),
            within.Count(walk => walk.WrongParts > 0),
            minutes,
            Either(walks, minutes),
            walks.Length == 0 ? 0 : walks.Average(walk => walk.Checks));
    }

    /// <summary>
    /// The share between which the true one lies with 95 % (Wilson); anything where nothing was played.
    /// </summary>
    public static (double Low, double High) Wilson(int hits, int of) =>
        of == 0 ? (0, 1) : (Estimate.ShareOf(hits, of).Low, Estimate.ShareOf(hits, of).High);

    // Mean and standard error, as for a large sample; one walk alone says nothing of the spread.
    private static double Either(ImmutableArray<SimulatedWalk> walks, double mean) => walks.Length < 2
        ? double.NaN
        : Z
            * Math.Sqrt(walks.Sum(walk => (walk.Minutes - mean) * (walk.Minutes - mean)) / (walks.Length - 1)
                / walks.Length);
}
