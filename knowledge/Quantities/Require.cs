using System.Globalization;
using System.Runtime.CompilerServices;

namespace DxAssistant.Knowledge.Quantities;

/// <summary>Checks of arguments; a failure is the calling code's mistake.</summary>
internal static class Require
{
    /// <summary>Passes a number on that lies in a range, ends included.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the range or NaN.</exception>
    public static double InRange(
        double value, double least, double most, string unit,
            [CallerArgumentExpression(nameof(value))] string name = "") =>
        value >= least && value <= most ? value : throw Outside(value, $"{Text(least)} to {Text(most)} {unit}", name);

    /// <summary>Passes a finite number on that is above zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is zero, negative, infinite or NaN.</exception>
    public static double Positive(double value, string unit,
        [CallerArgumentExpression(nameof(value))] string name = "") =>
        value > 0 && double.IsFinite(value) ? value : throw Outside(value, $"above 0 {unit}", name);

    /// <summary>Passes a finite number on that is zero or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative, infinite or NaN.</exception>
    public static double NotNegative(double value, string unit,
        [CallerArgumentExpression(nameof(value))] string name = "") =>
        value >= 0 && double.IsFinite(value) ? value : throw Outside(value, $"0 {unit} or more", name);

    private static ArgumentOutOfRangeException Outside(double value, string range, string name) =>
        new(name, value, $"{name} is {Text(value)}; it must be {range.TrimEnd()}");

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
