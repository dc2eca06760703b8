using System.Collections.Immutable;

namespace DxAssistant.Server.Simulating;

/// <summary>The figures of several simulated walks.</summary>
/// <param name="Proven">Walks that ended at the true fault, of those in which this person can.</param>
/// <param name="Within">Walks of persons who can repair the true fault.</param>
/// <param name="Missed">Walks that ended with advice, as nothing found or intermittent, although there was a fault.</param>
/// <param name="VisitsInVain">Walks left to a person with another role although this one could have repaired it.</param>
/// <param name="Stuck">Walks without an end.</param>
/// <param name="WrongParts">Parts changed for nothing.</param>
/// <param name="WrongWalks">Walks in which a part was changed for nothing.</param>
/// <param name="MinutesEither">Half the width of the 95 % interval about the mean minutes.</param>
internal sealed record WalkTally(
    int Walks, int Within, int Proven, int Booked, int Missed, int VisitsInVain, int Stuck, int WrongParts, int WrongWalks, double Minutes, double MinutesEither, double Checks)
{
    // The normal quantile of 97.5 %.
    private const double Z = 1.959963984540054;

    public double ProvenShare => Within == 0 ? 1 : (double)Proven / Within;

    public double WrongPartsPerWalk => Walks == 0 ? 0 : (double)WrongParts / Walks;

    public static WalkTally Of(ImmutableArray<SimulatedWalk> walks)
    {
        double minutes = walks.Length == 0 ? 0 : walks.Average(walk => walk.Minutes);
        return new WalkTally(
            walks.Length,
            walks.Count(walk => walk.End != WalkEnd.Booked),
            walks.Count(walk => walk.End == WalkEnd.Proven),
            walks.Count(walk => walk.End == WalkEnd.Booked),
            walks.Count(walk => walk.End == WalkEnd.Missed),
            walks.Count(walk => walk.End == WalkEnd.BookedForNothing),
            walks.Count(walk => walk.End == WalkEnd.Stuck),
            walks.Sum(walk => walk.WrongParts),
            walks.Count(walk => walk.WrongParts > 0),
            minutes,
            Either(walks, minutes),
            walks.Length == 0 ? 0 : walks.Average(walk => walk.Checks));
    }

    /// <summary>The share between which the true one lies with 95 %.</summary>
    /// <remarks>Source: E. B. Wilson, Journal of the American Statistical Association 22 (1927), score interval (from memory).</remarks>
    public static (double Low, double High) Wilson(int hits, int of)
    {
        if (of == 0) return (0, 1);
        double share = (double)hits / of, square = Z * Z / of;
        double middle = (share + square / 2) / (1 + square);
        double half = Z / (1 + square) * Math.Sqrt(share * (1 - share) / of + square / 4 / of);
        return (Math.Max(0, middle - half), Math.Min(1, middle + half));
    }

    // Mean and standard error, as for a large sample; one walk alone says nothing of the spread.
    private static double Either(ImmutableArray<SimulatedWalk> walks, double mean) => walks.Length < 2
        ? double.NaN
        : Z * Math.Sqrt(walks.Sum(walk => (walk.Minutes - mean) * (walk.Minutes - mean)) / (walks.Length - 1) / walks.Length);
}
