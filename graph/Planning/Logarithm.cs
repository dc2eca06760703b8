namespace DxAssistant.Graph.Planning;

/// <summary>
/// Logarithms from additions, multiplications and divisions alone, so that every system gives the same bits.
/// </summary>
internal static class Logarithm
{
    private const double TwoOverLn2 = 2.885390081777926814719849362;
    private const double SqrtHalf = 0.70710678118654752440;

    /// <summary>Logarithm to base 2, good to about 1e-15.</summary>
    /// <param name="value">A normal number above 0.</param>
    public static double Base2(double value)
    {
        long bits = BitConverter.DoubleToInt64Bits(value);
        long exponent = (bits >> 52) - 1022;
        // The mantissa, 0.5 to 1, then shifted to lie around 1.
        double mantissa = BitConverter.Int64BitsToDouble((bits & 0x000F_FFFF_FFFF_FFFF) | 0x3FE0_0000_0000_0000);
        if (mantissa < SqrtHalf) (mantissa, exponent) = (mantissa * 2, exponent - 1);
        // ln m = 2 (s + s³/3 + s⁵/5 + …), s = (m − 1)/(m + 1), |s| ≤ 0.172.
        double s = (mantissa - 1) / (mantissa + 1);
        double square = s * s;
        double series = 1.0 / 21;
        for (int odd = 19; odd > 0; odd -= 2) series = series * square + 1.0 / odd;
        return exponent + TwoOverLn2 * s * series;
    }

    /// <summary>−x log₂ x; 0 at 0 and for numbers too small to matter.</summary>
    public static double Entropy(double share) => share < 1e-300 ? 0 : -share * Base2(share);
}
