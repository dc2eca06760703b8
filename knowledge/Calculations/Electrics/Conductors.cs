using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Resistance of copper conductors and the voltage they lose. What they may carry is left to local
/// codes.</summary>
public static class Conductors
{
    public static readonly Citation AmericanTable = new(
        "NEC chapter 9, table 8", "uncoated copper, 75 °C; sizes other than 14 to 8 from memory");
    public static readonly Citation MetricTable = new("IEC 60228",
        "class 1 and 2, plain copper, 20 °C; 16 mm² and above, and 0.5 mm², from memory");
    public static readonly Citation TemperatureLaw = new(
        "NEC chapter 9, table 8, note; IEC 60228", "R2 = R1 (1 + alpha (T2 - T1))");

    /// <summary>AWG, Ω/kft stranded, Ω/kft solid (0 where the table has none).</summary>
    private static readonly (int Gauge, double Stranded, double Solid)[] American =
    [
        (18, 7.95, 7.77), (16, 4.99, 4.89), (14, 3.14, 3.07), (12, 1.98, 1.93), (10, 1.24, 1.21), (8, 0.778, 0.764),
        (6, 0.491, 0), (4, 0.308, 0), (3, 0.245, 0), (2, 0.194, 0), (1, 0.154, 0), (0, 0.122, 0),
    ];

    /// <summary>mm², largest Ω/km.</summary>
    private static readonly (double Size, double OhmsPerKilometer)[] Metric =
    [
        (0.5, 36.0), (0.75, 24.5), (1, 18.1), (1.5, 12.1), (2.5, 7.41), (4, 4.61), (6, 3.08), (10, 1.83), (16, 1.15),
        (25, 0.727), (35, 0.524),
    ];

    /// <summary>Ω/kft of an American size at 75 °C; null when the table has none.</summary>
    public static double? OhmsPerKiloFoot(double gauge, bool solid)
    {
        foreach (var (size, stranded, one) in American)
            if (size == gauge)
                return solid ? one > 0 ? one : null : stranded;
        return null;
    }

    /// <summary>Largest Ω/km of a metric size at 20 °C; null when the table has none.</summary>
    public static double? OhmsPerKilometer(double squareMillimeters)
    {
        foreach (var (size, ohms) in Metric)
            if (Math.Abs(size - squareMillimeters) < 1e-9)
                return ohms;
        return null;
    }

    /// <summary>Voltage lost, V: resistance only, unity power factor.</summary>
    /// <param name="ohmsPerMeter">Of one conductor.</param>
    /// <param name="oneWay">Length of the run.</param>
    public static double Drop(Current current, double ohmsPerMeter, Length oneWay, bool threePhase) =>
        (threePhase ? Math.Sqrt(3) : 2) * current.Amperes * ohmsPerMeter * oneWay.Meters;
}
