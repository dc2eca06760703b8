using System.Collections.Immutable;

namespace DxAssistant.Server.Simulating;

/// <summary>The figures of several simulated walks.</summary>
/// <param name="Proven">Walks that ended at the true fault, of those in which this person can.</param>
/// <param name="Within">Walks of persons who can repair the true fault.</param>
internal sealed record WalkTally(
    int Walks, int Within, int Proven, int Booked, int DeadEnds, int WrongParts, double Minutes, double Checks)
{
    public double ProvenShare => Within == 0 ? 1 : (double)Proven / Within;

    public double WrongPartsPerWalk => Walks == 0 ? 0 : (double)WrongParts / Walks;

    public static WalkTally Of(ImmutableArray<SimulatedWalk> walks) => new(
        walks.Length,
        walks.Count(walk => walk.End != WalkEnd.Booked),
        walks.Count(walk => walk.End == WalkEnd.Proven),
        walks.Count(walk => walk.End == WalkEnd.Booked),
        walks.Count(walk => walk.End is WalkEnd.Missed or WalkEnd.Stuck or WalkEnd.BookedForNothing),
        walks.Sum(walk => walk.WrongParts),
        walks.Length == 0 ? 0 : walks.Average(walk => walk.Minutes),
        walks.Length == 0 ? 0 : walks.Average(walk => walk.Checks));

    /// <summary>The share between which the true one lies with 95 %.</summary>
    /// <remarks>Source: E. B. Wilson, Journal of the American Statistical Association 22 (1927), score interval (from memory).</remarks>
    public static (double Low, double High) Wilson(int hits, int of)
    {
        if (of == 0) return (0, 1);
        const double z = 1.959963984540054;
        double share = (double)hits / of, square = z * z / of;
        double middle = (share + square / 2) / (1 + square);
        double half = z / (1 + square) * Math.Sqrt(share * (1 - share) / of + square / 4 / of);
        return (Math.Max(0, middle - half), Math.Min(1, middle + half));
    }
}
