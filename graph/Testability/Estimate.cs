namespace DxAssistant.Graph.Testability;

/// <summary>A figure and between what it lies with 95 %.</summary>
/// <param name="Low">The lower end of its confidence interval; the value itself when it is exact.</param>
/// <param name="High">The upper end.</param>
public readonly record struct Estimate(double Value, double Low, double High)
{
    // 97.5 % point of the normal distribution.
    private const double NormalPoint = 1.959963984540054;
    private static readonly double[] FirstPoints = [12.7062, 4.3027, 3.1824, 2.7764];

    /// <summary>A figure that may be off as far to either side.</summary>
    public Estimate(double value, double halfWidth)
        : this(value, value - halfWidth, value + halfWidth) => Spread = halfWidth;

    /// <summary>
    /// Half of its interval as long as that was as wide to either side and not cut at what is possible.
    /// </summary>
    public double Spread { get; private init; }

    /// <summary>How far off it may be, to the side on which that is more.</summary>
    public double HalfWidth => Math.Max(Value - Low, High - Value);

    public static Estimate Exactly(double value) => new(value, value, value);

    /// <summary>The mean of values drawn independently, and its interval by Student's t.</summary>
    /// <remarks>
    /// Values that are all alike have an interval of 0, whatever the next would be: it is an estimate too.
    /// </remarks>
    /// <param name="values">At least one; the interval of a single one is infinite.</param>
    public static Estimate MeanOf(IReadOnlyCollection<double> values)
    {
        double mean = values.Average();
        if (values.Count < 2) return new Estimate(mean, double.PositiveInfinity);
        double squares = values.Sum(value => (value - mean) * (value - mean));
        return new Estimate(mean, StudentPoint(values.Count - 1)
            * Math.Sqrt(squares / (values.Count - 1) / values.Count));
    }

    /// <summary>The mean of amounts, none below 0: nor is its interval.</summary>
    /// <param name="amounts">At least one.</param>
    public static Estimate MeanOfAmounts(IReadOnlyCollection<double> amounts) => FromNothing(MeanOf(amounts));

    /// <summary>The mean of how often something happened in each draw.</summary>
    /// <remarks>
    /// Where it never did, it happens at most 3/n times a draw (rule of three: Hanley and Lippman-Hand, Journal of the
    /// American Medical Association 249, 1983, from memory). Where it seldom did, Student's t is too narrow: the mean
    /// is no less than the share of draws in which it happened, so that share's interval counts too.
    /// </remarks>
    /// <param name="counts">At least one; 0, 1, 2 and so on.</param>
    public static Estimate MeanOfCounts(IReadOnlyCollection<double> counts)
    {
        int draws = counts.Count, some = counts.Count(count => count > 0);
        if (some == 0) return new Estimate(0, 0, 3.0 / draws);
        (Estimate mean, Estimate share) = (MeanOf(counts), ShareOf(some, draws));
        return mean with { Low = Math.Max(mean.Low, share.Low), High = Math.Max(mean.High, share.High) };
    }

    // 97.5 % point of Student's t. Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.10 for the first
    // four degrees of freedom, and 26.7.5 from there on (from memory): off by less than one in a thousand.
    private static double StudentPoint(int degrees)
    {
        if (degrees <= FirstPoints.Length) return FirstPoints[degrees - 1];
        double square = NormalPoint * NormalPoint, inverse = 1.0 / degrees;
        double first = (square + 1) / 4, second = ((5 * square + 16) * square + 3) / 96;
        double third = (((3 * square + 19) * square + 17) * square - 15) / 384;
        double fourth = ((((79 * square + 776) * square + 1482) * square - 1920) * square - 945) / 92160;
        return NormalPoint * (1 + inverse * (first + inverse * (second + inverse * (third + inverse * fourth))));
    }

    /// <summary>A share of draws and its interval, true also near 0 and 1, and never beyond them.</summary>
    /// <remarks>
    /// Source: E. B. Wilson, Journal of the American Statistical Association 22 (1927), score interval (from memory).
    /// </remarks>
    /// <param name="draws">Above 0.</param>
    public static Estimate ShareOf(int hits, int draws) => Share((double)hits / draws, draws);

    private static Estimate Share(double share, double draws)
    {
        if (double.IsInfinity(draws)) return Exactly(share);
        double square = NormalPoint * NormalPoint / draws;
        double middle = (share + square / 2) / (1 + square);
        double half = NormalPoint / (1 + square) * Math.Sqrt(share * (1 - share) / draws + square / 4 / draws);
        return new Estimate(share, share <= 0 ? 0 : Math.Max(0, middle - half),
            share >= 1 ? 1 : Math.Min(1, middle + half));
    }

    /// <summary>The weighted mean of independent figures.</summary>
    /// <param name="parts">The weights sum to 1.</param>
    public static Estimate Mixture(IEnumerable<(double Weight, Estimate Figure)> parts)
    {
        (double value, double variance) = (0, 0);
        foreach ((double weight, Estimate figure) in parts)
        {
            value += weight * figure.Value;
            variance += weight * weight * figure.Spread * figure.Spread;
        }

        return new Estimate(value, Math.Sqrt(variance));
    }

    /// <summary>The same of amounts, none below 0.</summary>
    /// <param name="parts">The weights sum to 1.</param>
    public static Estimate MixtureOfAmounts(IEnumerable<(double Weight, Estimate Figure)> parts) =>
        FromNothing(Mixture(parts));

    /// <summary>The same of shares.</summary>
    /// <remarks>
    /// Parts that show nothing are no surer than the others, so the interval is that of one share of as many draws as
    /// the weights leave (Kish, Survey Sampling, 1965, from memory).
    /// </remarks>
    /// <param name="parts">The weights sum to 1; the draws of an exact figure are infinite.</param>
    public static Estimate MixtureOfShares(IReadOnlyCollection<(double Weight, Estimate Figure, double Draws)> parts) =>
        Share(Mixture(parts.Select(part => (part.Weight, part.Figure))).Value, DrawsLeft(parts));

    /// <summary>The same of how often something happened in each draw.</summary>
    /// <param name="parts">The weights sum to 1; the draws of an exact figure are infinite.</param>
    public static Estimate MixtureOfCounts(IReadOnlyCollection<(double Weight, Estimate Figure, double Draws)> parts)
    {
        Estimate mean = MixtureOfAmounts(parts.Select(part => (part.Weight, part.Figure)));
        double draws = DrawsLeft(parts);
        return mean
            with { High =
                Math.Max(mean.High, mean.Value == 0 ? 3 / draws : Share(Math.Min(mean.Value, 1), draws).High) };
    }

    private static double DrawsLeft(IEnumerable<(double Weight, Estimate Figure, double Draws)> parts) =>
        1 / parts.Sum(part => part.Weight * part.Weight / part.Draws);

    private static Estimate FromNothing(Estimate mean) => mean with { Low = Math.Max(0, mean.Low) };

    /// <summary>The figure on another scale.</summary>
    /// <param name="factor">Above 0.</param>
    public Estimate Times(double factor) =>
        new(Value * factor, Low * factor, High * factor) { Spread = Spread * factor };

    /// <summary>The figure from another zero point.</summary>
    public Estimate Plus(double more) => new(Value + more, Low + more, High + more) { Spread = Spread };
}
