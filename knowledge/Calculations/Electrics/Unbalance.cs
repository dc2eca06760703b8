using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Unbalance of three voltages, currents or resistances.</summary>
public static class Unbalance
{
    public static readonly Citation MotorStandard = new("NEMA MG 1", "14.36, also 12.45");
    public static readonly Citation PowerQuality = new("IEC 61000-4-30", "5.7");
    public static readonly Citation ShortForm =
        new("Pillay & Manyage, IEEE Power Engineering Review, May 2001", "factor 82", CitationStanding.FromMemory);

    // Read off the curve NEMA MG 1 figure 14-1 by public pages, which differ by up to 0.02.
    private static readonly (double Percent, double Factor)[] DeratingCurve =
        [(0, 1), (1, 1), (2, 0.95), (2.5, 0.93), (3, 0.89), (4, 0.82), (5, 0.76)];

    /// <summary>Mean, largest deviation from it, and that deviation as a share of the mean.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The mean is not above zero.</exception>
    /// <remarks>Source: NEMA MG 1, 14.36, line-to-line voltages; the same formula is used for currents and
    /// windings.</remarks>
    public static (double Mean, double Deviation, double Share) OfThree(double one, double two, double three)
    {
        var mean = Require.Positive((one + two + three) / 3, "mean");
        var deviation = Math.Max(Math.Abs(one - mean), Math.Max(Math.Abs(two - mean), Math.Abs(three - mean)));
        return (mean, deviation, deviation / mean);
    }

    /// <summary>True ratio of negative to positive sequence; null when the three cannot be the sides of a
    /// triangle.</summary>
    /// <remarks>Source: IEC 61000-4-30, 5.7.</remarks>
    public static double? NegativeSequence(double u12, double u23, double u31)
    {
        double Squared(double u) => u * u;
        var squares = Squared(u12) + Squared(u23) + Squared(u31);
        var beta = (Squared(u12 * u12) + Squared(u23 * u23) + Squared(u31 * u31)) / (squares * squares);
        var inner = 3 - 6 * beta;
        // Rounding may push a balanced supply a hair past 1, which would make the root imaginary.
        if (!(inner >= 0))
            return null;
        var root = Math.Min(1, Math.Sqrt(inner));
        return Math.Sqrt((1 - root) / (1 + root));
    }

    /// <summary>The short form for the ratio of negative to positive sequence.</summary>
    public static double Approximate(double u12, double u23, double u31)
    {
        var mean = (u12 + u23 + u31) / 3;
        var squares = (u12 - mean) * (u12 - mean) + (u23 - mean) * (u23 - mean) + (u31 - mean) * (u31 - mean);
        return 0.82 * Math.Sqrt(squares) / mean;
    }

    /// <summary>Share of its rating that a motor may carry.</summary>
    /// <param name="percent">Voltage unbalance, %, 0 to 5, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range: no operation above 5 %.</exception>
    public static double Derating(double percent)
    {
        Require.InRange(percent, 0, 5, "%");
        var i = 1;
        while (percent > DeratingCurve[i].Percent)
            i++;
        var (left, right) = (DeratingCurve[i - 1], DeratingCurve[i]);
        return left.Factor + (percent - left.Percent) / (right.Percent - left.Percent) * (right.Factor - left.Factor);
    }
}
