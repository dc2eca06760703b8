namespace DxAssistant.Knowledge.Judging;

/// <summary>What three voltages of a split supply mean together: leg to leg, first leg to ground, second leg to
/// ground.</summary>
/// <remarks>
/// The two legs are opposite in phase, so that leg to leg is their sum. Between two legs of a three-phase star it is
/// sqrt(3) times a leg (phasors 120° apart). Source: textbook relation; the widths are common practice, no source.
/// </remarks>
internal static class SplitPattern
{
    private const double Near = 0.1;

    // Loads of unlike power factor bend the line of an open neutral, but not as far as this share of nominal.
    private const double Bent = 0.35;

    /// <summary>The id of a phrase without its <c>pattern-</c>; null when they show none.</summary>
    /// <param name="below">The lower limit as a share of nominal.</param>
    /// <param name="above">The upper limit as a share of nominal.</param>
    public static string? Of(Facts facts, double nominal, double below, double above)
    {
        var (line, one, two) = (facts[0] / nominal, facts[1] / nominal, facts[2] / nominal);
        var (low, high) = (Math.Min(one, two), Math.Max(one, two));
        return line < Near && IsNear(one, 0.5) && IsNear(two, 0.5) ? "same-leg-twice"
            : IsNear(high, 1) && IsNear(low, 0.5) && IsNear(line, 0.5) ? "ground-is-live"
            : low < Near && high >= Near && line < 0.8 ? "one-leg-lost"
            : IsStar(line, one, two) ? "legs-of-three-phase"
            : high > above / 2 && low < below / 2 && IsSum(line, one, two) ? "open-neutral"
            : low < below / 2 && high >= below / 2 && high <= above / 2 && line < 1 && IsSum(line, one, two)
                ? "one-leg-low"
            : null;
    }

    /// <summary>True for voltages that close a triangle but lie on no line, such as three times the nominal voltage:
    /// not the legs of one split supply.</summary>
    public static bool IsNoSplitSupply(Facts facts, double nominal)
    {
        var (line, one, two) = (facts[0] / nominal, facts[1] / nominal, facts[2] / nominal);
        return Math.Min(Math.Abs(line - one - two), Math.Abs(line - Math.Abs(one - two))) > Bent;
    }

    private static bool IsStar(double line, double one, double two) =>
        Math.Abs(one - two) < 0.05 * (one + two) && Math.Abs(2 * line / (one + two) - Math.Sqrt(3)) < 0.07;

    private static bool IsSum(double line, double one, double two) => Math.Abs(one + two - line) < 0.05;

    private static bool IsNear(double share, double aim) => Math.Abs(share - aim) <= Near * aim;
}
