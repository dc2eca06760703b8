using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Air;

/// <summary>Moist air as a mixture of ideal gases.</summary>
/// <remarks>Source: ASHRAE Fundamentals, chapter 1 (2017, SI).</remarks>
public static class MoistAir
{
    /// <summary>Coldest air the formulas cover, °C.</summary>
    public const double ColdestCelsius = -100;

    /// <summary>Hottest air the formulas cover, °C.</summary>
    public const double HottestCelsius = 200;

    private const double TriplePointCelsius = 0.01;
    private const double MassRatio = 0.621945;

    public static readonly Citation Handbook = new("ASHRAE Fundamentals 2017 SI",
        "chapter 1, Hyland-Wexler saturation pressure");

    /// <summary>Saturation pressure of water, over ice below 0.01 °C.</summary>
    /// <param name="temperature">−100 to 200 °C, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static AbsolutePressure Saturation(Temperature temperature) => AbsolutePressure.FromPascals(
        SaturationPascals(Require.InRange(temperature.Celsius, ColdestCelsius - 1e-6, HottestCelsius + 1e-6, "°C")));

    /// <summary>Temperature at which a vapour pressure saturates, which is the dew or frost point; null outside the
    /// formulas.</summary>
    public static Temperature? SaturationTemperature(AbsolutePressure vapour)
    {
        if (!(vapour.Pascals >= SaturationPascals(ColdestCelsius)
            && vapour.Pascals <= SaturationPascals(HottestCelsius)))
            return null;
        return Halve(ColdestCelsius, HottestCelsius, t => SaturationPascals(t) < vapour.Pascals);
    }

    /// <summary>Kilograms of water to one of dry air, from vapour pressure; the pressure is above the
    /// vapour's.</summary>
    public static double Ratio(double vapourPascals, AbsolutePressure pressure) =>
        MassRatio * vapourPascals / (pressure.Pascals - vapourPascals);

    /// <summary>Vapour pressure, Pa, from the humidity ratio.</summary>
    public static double VapourPascals(double ratio, AbsolutePressure pressure) =>
        pressure.Pascals * ratio / (MassRatio + ratio);

    /// <summary>Humidity ratio from dry and wet bulb; below 0 when no air has that wet bulb.</summary>
    public static double RatioFromWetBulb(Temperature dry, Temperature wet, AbsolutePressure pressure)
    {
        var (t, w) = (dry.Celsius, wet.Celsius);
        var saturated = Ratio(SaturationPascals(w), pressure);
        return w >= 0
            ? ((2501 - 2.326 * w) * saturated - 1.006 * (t - w)) / (2501 + 1.86 * t - 4.186 * w)
            : ((2830 - 0.24 * w) * saturated - 1.006 * (t - w)) / (2830 + 1.86 * t - 2.1 * w);
    }

    /// <summary>Wet bulb of air with a humidity ratio.</summary>
    public static Temperature WetBulb(Temperature dry, double ratio, AbsolutePressure pressure)
    {
        var dew = SaturationTemperature(AbsolutePressure.FromPascals(
            VapourPascals(ratio, pressure)))?.Celsius ?? ColdestCelsius;
        return Halve(Math.Min(dew, dry.Celsius), dry.Celsius, w =>
            RatioFromWetBulb(dry, Temperature.FromCelsius(w), pressure) < ratio);
    }

    /// <summary>Enthalpy, J to 1 kg of dry air, zero at 0 °C and dry.</summary>
    public static double Enthalpy(Temperature dry, double ratio) =>
        1000 * (1.006 * dry.Celsius + ratio * (2501 + 1.86 * dry.Celsius));

    /// <summary>Volume, m³ to 1 kg of dry air.</summary>
    public static double Volume(Temperature dry, double ratio, AbsolutePressure pressure) =>
        287.042 * dry.Kelvins * (1 + 1.607858 * ratio) / pressure.Pascals;

    /// <summary>Density, kg/m³.</summary>
    public static double Density(Temperature dry, double ratio, AbsolutePressure pressure) =>
        (1 + ratio) / Volume(dry, ratio, pressure);

    private static double SaturationPascals(double celsius)
    {
        var t = celsius + 273.15;
        return Math.Exp(celsius <= TriplePointCelsius
            ? -5674.5359 / t + 6.3925247 - 9.677843e-3 * t + 6.2215701e-7 * t * t + 2.0747825e-9 * t * t * t
                - 9.484024e-13 * t * t * t * t + 4.1635019 * Math.Log(t)
            : -5800.2206 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t - 1.4452093e-8 * t * t * t
                + 6.5459673 * Math.Log(t));
    }

    private static Temperature Halve(double low, double high, Func<double, bool> tooLow)
    {
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = tooLow(middle) ? (middle, high) : (low, middle);
        }
        return Temperature.FromCelsius((low + high) / 2);
    }
}
