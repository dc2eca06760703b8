using System.Globalization;

namespace DxAssistant.Knowledge.Quantities;

/// <summary>Numbers as text, the same on every system.</summary>
public static class NumberText
{
    /// <summary>Writes a number to at most some significant digits, without trailing zeros or an exponent where one
    /// can be avoided.</summary>
    /// <remarks>Seven digits by default, so that the last bit in which systems may differ never shows.</remarks>
    public static string Of(double value, int digits = 7)
    {
        var rounded = Round(value, digits);
        var magnitude = Math.Abs(rounded);
        return magnitude is 0 or (>= 1e-6 and < 1e15)
            ? rounded.ToString("0.###############", CultureInfo.InvariantCulture)
            : rounded.ToString("0.######e0", CultureInfo.InvariantCulture);
    }

    /// <summary>Rounds to significant digits, half away from zero; the default of eleven removes what systems may
    /// disagree on.</summary>
    public static double Round(double value, int digits = 11) => value == 0 || !double.IsFinite(value)
        ? value + 0.0
        : double.Parse(value.ToString("e" + (digits - 1).ToString(CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
