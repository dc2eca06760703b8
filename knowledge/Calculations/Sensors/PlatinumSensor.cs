using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Sensors;

/// <summary>Platinum resistance sensors (Pt100, Pt1000).</summary>
/// <remarks>Source: IEC 60751, Callendar–Van Dusen equation and tolerance classes.</remarks>
public static class PlatinumSensor
{
    private const double A = 3.9083e-3;
    private const double B = -5.775e-7;
    private const double C = -4.183e-12;

    public static readonly Citation Standard = new("IEC 60751", "equations and tolerance classes");

    /// <summary>Resistance at a temperature.</summary>
    /// <param name="atIcePoint">Resistance at 0 °C.</param>
    /// <param name="temperature">−200 to 850 °C, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside that range.</exception>
    public static Resistance ResistanceAt(Resistance atIcePoint, Temperature temperature) =>
        Resistance.FromOhms(atIcePoint.Ohms * Ratio(Require.InRange(temperature.Celsius, -200.0001, 850.0001, "°C")));

    /// <summary>Temperature at a resistance; null outside −200 to 850 °C.</summary>
    public static Temperature? TemperatureAt(Resistance atIcePoint, Resistance resistance)
    {
        var ratio = resistance.Ohms / atIcePoint.Ohms;
        // The ends are covered, whatever the last bit of the quotient.
        const double slack = 1e-12;
        if (!(ratio >= Ratio(-200) - slack && ratio <= Ratio(850) + slack))
            return null;
        var (low, high) = (-200.0, 850.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Ratio(middle) < ratio ? (middle, high) : (low, middle);
        }
        return Temperature.FromCelsius((low + high) / 2);
    }

    /// <summary>Limit of error of a class, K.</summary>
    /// <param name="constant">K.</param>
    /// <param name="slope">K for each °C of the size of the temperature.</param>
    private static double Limit(double constant, double slope, Temperature temperature) =>
        constant + slope * Math.Abs(temperature.Celsius);

    /// <summary>Limit of error of class A, K.</summary>
    public static double ClassAKelvins(Temperature temperature) => Limit(0.15, 0.002, temperature);

    /// <summary>Limit of error of class B, K.</summary>
    public static double ClassBKelvins(Temperature temperature) => Limit(0.30, 0.005, temperature);

    private static double Ratio(double t) =>
        1 + A * t + B * t * t + (t < 0 ? C * (t - 100) * t * t * t : 0);
}
