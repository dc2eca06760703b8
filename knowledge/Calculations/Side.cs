namespace DxAssistant.Knowledge.Calculations;

/// <summary>On which side of limits a number lies, ends included in the inside.</summary>
internal static class Side
{
    /// <summary><c>below</c>, <c>inside</c> or <c>above</c>; a hair on either side counts as the limit itself, so that
    /// the last bit decides nothing.</summary>
    public static string Of(double value, double least, double most) =>
        value - least < -Grain(least) ? "below"
        : value - most > Grain(most) ? "above"
        : "inside";

    /// <summary>True when a number lies inside, ends included.</summary>
    public static bool IsInside(double value, double least, double most) => Of(value, least, most) == "inside";

    private static double Grain(double limit) => double.IsInfinity(limit) ? 0 : 1e-11 * Math.Max(Math.Abs(limit), 1e-9);
}
