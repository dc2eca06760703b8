using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Sensors;

/// <summary>Thermistors (NTC): resistance and temperature.</summary>
public static class Thermistor
{
    internal const double RoomKelvins = 298.15;

    public static readonly Citation BetaLaw = new("IEC 60539-1, two-point beta", "equation; clause from memory");
    public static readonly Citation SteinhartHartLaw = new("Steinhart & Hart, Deep-Sea Research 15", "1968");

    /// <summary>Resistance by the beta law.</summary>
    /// <param name="at25">At 25 °C.</param>
    /// <remarks>Source: IEC 60539-1. About 1 K off at 0 °C against a table; use only when nothing else is
    /// known.</remarks>
    public static Resistance ResistanceByBeta(Resistance at25, TemperatureDelta beta, Temperature temperature) =>
        Resistance.FromOhms(at25.Ohms * Math.Exp(beta.Kelvins * (1 / temperature.Kelvins - 1 / RoomKelvins)));

    /// <summary>Temperature by the beta law; null where the law gives none (its 1/T is 0 or below).</summary>
    public static Temperature? TemperatureByBeta(Resistance at25, TemperatureDelta beta, Resistance resistance) =>
        FromInverse(1 / RoomKelvins + Math.Log(resistance.Ohms / at25.Ohms) / beta.Kelvins);

    /// <summary>Beta from two points, K.</summary>
    public static double BetaKelvins(Resistance one, Temperature atOne, Resistance two, Temperature atTwo) =>
        atOne.Kelvins * atTwo.Kelvins / (atTwo - atOne).Kelvins * Math.Log(one.Ohms / two.Ohms);

    /// <summary>Slope of the beta law, 1/K: the share by which the resistance changes for one kelvin.</summary>
    public static double AlphaPerKelvin(TemperatureDelta beta, Temperature temperature) =>
        -beta.Kelvins / (temperature.Kelvins * temperature.Kelvins);

    /// <summary>Resistance near a table point from the slope that the table prints.</summary>
    /// <param name="atPoint">Resistance at the table point.</param>
    /// <param name="alphaPerKelvin">Size of the slope at that point, 1/K.</param>
    /// <remarks>Source: thermistor maker's data book, standardized R/T characteristics.</remarks>
    public static Resistance NearTablePoint(Resistance atPoint, double alphaPerKelvin, Temperature point,
        Temperature wanted) =>
        Resistance.FromOhms(atPoint.Ohms * Math.Exp(
            alphaPerKelvin * point.Kelvins * point.Kelvins * (1 / wanted.Kelvins - 1 / point.Kelvins)));

    /// <summary>Temperature by the Steinhart–Hart law; null where the law gives none.</summary>
    /// <param name="a">1/K.</param>
    /// <param name="b">1/K.</param>
    /// <param name="c">1/K.</param>
    public static Temperature? TemperatureBySteinhartHart(double a, double b, double c, Resistance resistance) =>
        FromInverse(SteinhartHartInverse(a, b, c, Math.Log(resistance.Ohms)));

    /// <summary>The coefficients A, B, C (1/K) through three points; null when they do not fix a law.</summary>
    public static (double A, double B, double C)? SteinhartHartFit(
        (Resistance R, Temperature T) first, (Resistance R, Temperature T) second, (Resistance R, Temperature T) third)
    {
        var (x1, x2, x3) = (Math.Log(first.R.Ohms), Math.Log(second.R.Ohms), Math.Log(third.R.Ohms));
        var (y1, y2, y3) = (1 / first.T.Kelvins, 1 / second.T.Kelvins, 1 / third.T.Kelvins);
        var (slope2, slope3) = ((y2 - y1) / (x2 - x1), (y3 - y1) / (x3 - x1));
        var c = (slope3 - slope2) / (x3 - x2) / (x1 + x2 + x3);
        var b = slope2 - c * (x1 * x1 + x1 * x2 + x2 * x2);
        var a = y1 - (b + c * x1 * x1) * x1;
        return double.IsFinite(a) && double.IsFinite(b) && double.IsFinite(c) ? (a, b, c) : null;
    }

    internal static double SteinhartHartInverse(double a, double b, double c, double logOhms) =>
        a + b * logOhms + c * logOhms * logOhms * logOhms;

    // The cubic in ln R has one real root because b is above 0 and c is not below.
    internal static double SteinhartHartLogOhms(double a, double b, double c, double kelvins)
    {
        var rest = a - 1 / kelvins;
        if (c == 0)
            return -rest / b;
        var half = rest / (2 * c);
        var third = b / (3 * c);
        var root = Math.Sqrt(third * third * third + half * half);
        return Math.Cbrt(root - half) - Math.Cbrt(root + half);
    }

    private static Temperature? FromInverse(double inverseKelvins) =>
        inverseKelvins >= 1e-4 && double.IsFinite(inverseKelvins) ? Temperature.FromKelvins(1 / inverseKelvins) : null;
}
