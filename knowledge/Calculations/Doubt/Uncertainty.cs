namespace DxAssistant.Knowledge.Calculations.Doubt;

/// <summary>Uncertainty of readings and of figures made from them.</summary>
/// <remarks>Source: GUM, JCGM 100:2008.</remarks>
public static class Uncertainty
{
    public static readonly Citation Guide = new("GUM, JCGM 100:2008", "4.3.7 and 5.1.2");

    /// <summary>Limit of error of a meter: a share of the reading plus counts of the last digit.</summary>
    /// <param name="reading">In any unit.</param>
    /// <param name="percent">%, 0 or more.</param>
    /// <param name="counts">0 or more.</param>
    /// <param name="resolution">What one count is worth, in the unit of the reading; 0 or more.</param>
    public static double MeterLimit(double reading, double percent, double counts, double resolution) =>
        Math.Abs(reading) * percent / 100 + counts * resolution;

    /// <summary>Standard uncertainty when every error within a limit is as likely: limit / √3.</summary>
    /// <param name="limit">0 or more.</param>
    public static double OfLimit(double limit) => limit / Math.Sqrt(3);

    /// <summary>Standard uncertainty of a sum of independent parts: the root of the sum of (slope ×
    /// uncertainty)².</summary>
    public static double Combined(params ReadOnlySpan<(double Slope, double Uncertainty)> parts)
    {
        var sum = 0.0;
        foreach (var (slope, uncertainty) in parts)
            sum += slope * uncertainty * slope * uncertainty;
        return Math.Sqrt(sum);
    }
}
