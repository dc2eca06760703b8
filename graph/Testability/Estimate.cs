namespace DxAssistant.Graph.Testability;

/// <summary>A figure and how far off it may be.</summary>
/// <param name="HalfWidth">Half of its 95 % confidence interval; 0 when it is exact.</param>
public readonly record struct Estimate(double Value, double HalfWidth)
{
    // 97.5 % point of the normal distribution.
    private const double NormalPoint = 1.959964;
    private static readonly double[] FirstPoints = [12.7062, 4.3027, 3.1824, 2.7764];

    public static Estimate Exactly(double value) => new(value, 0);

    /// <summary>The mean of values drawn independently, and its interval by Student's t.</summary>
    /// <remarks>Values that are all alike have an interval of 0, whatever the next would be: it is an estimate too.</remarks>
    /// <param name="values">At least one; the interval of a single one is infinite.</param>
    public static Estimate MeanOf(IReadOnlyCollection<double> values)
    {
        double mean = values.Average();
        if (values.Count < 2) return new Estimate(mean, double.PositiveInfinity);
        double squares = values.Sum(value => (value - mean) * (value - mean));
        return new Estimate(mean, StudentPoint(values.Count - 1) * Math.Sqrt(squares / (values.Count - 1) / values.Count));
    }

    // 97.5 % point of Student's t. Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.10 for the first four
    // degrees of freedom, and 26.7.5 from there on (from memory): off by less than one in a thousand.
    private static double StudentPoint(int degrees)
    {
        if (degrees <= FirstPoints.Length) return FirstPoints[degrees - 1];
        double square = NormalPoint * NormalPoint, inverse = 1.0 / degrees;
        double first = (square + 1) / 4, second = ((5 * square + 16) * square + 3) / 96;
        double third = (((3 * square + 19) * square + 17) * square - 15) / 384;
        double fourth = ((((79 * square + 776) * square + 1482) * square - 1920) * square - 945) / 92160;
        return NormalPoint * (1 + inverse * (first + inverse * (second + inverse * (third + inverse * fourth))));
    }

    /// <summary>A share of draws and its interval (Wilson 1927, from memory), true also near 0 and 1.</summary>
    /// <param name="draws">Above 0.</param>
    public static Estimate ShareOf(int hits, int draws)
    {
        double share = (double)hits / draws, square = NormalPoint * NormalPoint;
        double half = NormalPoint / (1 + square / draws)
            * Math.Sqrt(share * (1 - share) / draws + square / (4.0 * draws * draws));
        double middle = (share + square / (2 * draws)) / (1 + square / draws);
        return new Estimate(share, Math.Max(Math.Abs(middle + half - share), Math.Abs(share - (middle - half))));
    }

    /// <summary>The weighted mean of independent figures.</summary>
    /// <param name="parts">The weights sum to 1.</param>
    public static Estimate Mixture(IEnumerable<(double Weight, Estimate Figure)> parts)
    {
        (double value, double variance) = (0, 0);
        foreach ((double weight, Estimate figure) in parts)
        {
            value += weight * figure.Value;
            variance += weight * weight * figure.HalfWidth * figure.HalfWidth;
        }

        return new Estimate(value, Math.Sqrt(variance));
    }
}
