namespace DxAssistant.Knowledge.Calculations.Doubt;

/// <summary>Probability that a true value conforms to limits, and rules of decision.</summary>
/// <remarks>Source: JCGM 106:2012, clause 7 (normal, no useful knowledge beforehand); ISO 14253-1.</remarks>
public static class Conformance
{
    public static readonly Citation Guide = new("JCGM 106:2012", "clause 7");
    public static readonly Citation OldRule = new("ISO 14253-1", "first edition, guard band U");
    public static readonly Citation NewRule = new("ISO 14253-1:2017", "guard band 1.65 u");

    /// <summary>Guard of the 2017 edition, in standard uncertainties.</summary>
    public const double NewGuard = 1.65;

    /// <summary>Probabilities that the true value lies below, inside and above limits; they sum to 1.</summary>
    /// <param name="uncertainty">Standard, 0 or more. With none, the limits themselves are inside.</param>
    /// <param name="least">May be minus infinity.</param>
    /// <param name="most">May be infinity; not below <paramref name="least"/>.</param>
    public static (double Below, double Inside, double Above) Of(
        double value, double uncertainty, double least, double most)
    {
        if (uncertainty <= 0)
            return Side.Of(value, least, most) switch { "below" => (1, 0, 0), "above" => (0, 0, 1), _ => (0, 1, 0) };
        var (below, above) = (Normal.Probability((least - value) / uncertainty),
            Normal.Probability((value - most) / uncertainty));
        return (below, Math.Max(0, 1 - below - above), above);
    }

    /// <summary><c>pass</c>, <c>fail</c> or <c>indeterminate</c>, with a guard on either side of each limit; ends of
    /// the pass zone pass.</summary>
    public static string Decide(double value, double guard, double least, double most) =>
        Side.IsInside(value, least + guard, most - guard) ? "pass"
        : Side.IsInside(value, least - guard, most + guard) ? "indeterminate"
        : "fail";
}
