using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>Shares that sum to 1, to nine digits, so that the digits sum to 1 too.</summary>
/// <remarks>
/// Each is rounded down, and what is left over goes to those that lost most (the method of largest remainders, from
/// memory). So a page that holds them has nothing to scale, and they are written again as they were read.
/// </remarks>
internal static class RoundedShares
{
    // More digits than anybody knows; they hide the last bits of scaling.
    private const double Steps = 1e9;

    /// <param name="shares">0 or more each, their sum above 0; scaled to sum to 1.</param>
    public static ImmutableArray<double> Of(ImmutableArray<double> shares)
    {
        double sum = shares.Sum();
        ImmutableArray<double> exact = [.. shares.Select(share => share / sum * Steps)];
        double[] whole = [.. exact.Select(Math.Floor)];
        int left = (int)Math.Round(Steps - whole.Sum());
        foreach (int place in Enumerable.Range(0, whole.Length).OrderByDescending(place => exact[place] - whole[place])
            .Take(left))
            whole[place]++;
        return [.. whole.Select(steps => steps / Steps)];
    }
}
