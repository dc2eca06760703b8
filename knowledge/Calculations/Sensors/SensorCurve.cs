using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Sensors;

/// <summary>Resistance of a sensor against temperature, over the range in which its maker gives it.</summary>
public abstract class SensorCurve
{
    private protected SensorCurve(string formula, Temperature coldest, Temperature hottest) =>
        (Formula, Coldest, Hottest) = (formula, coldest, hottest);

    /// <summary>The law between or behind the points, in plain text.</summary>
    public string Formula { get; }

    /// <summary>Lower end of the range, included.</summary>
    public Temperature Coldest { get; }

    /// <summary>Upper end of the range, included.</summary>
    public Temperature Hottest { get; }

    /// <summary>Table points, coldest first; empty when the curve is a law alone.</summary>
    public virtual ImmutableArray<SensorPoint> Points => [];

    /// <summary>Resistance at a temperature; false outside the range.</summary>
    public bool TryResistance(Temperature temperature, out Resistance resistance)
    {
        var inside = temperature >= Coldest && temperature <= Hottest;
        resistance = inside ? Resistance.FromOhms(Math.Exp(LogOhms(temperature.Kelvins))) : default;
        return inside;
    }

    /// <summary>Temperature at a resistance; false outside the range.</summary>
    public bool TryTemperature(Resistance resistance, out Temperature temperature)
    {
        temperature = default;
        if (resistance.Ohms <= 0)
            return false;
        var log = Math.Log(resistance.Ohms);
        var (cold, hot) = (LogOhms(Coldest.Kelvins), LogOhms(Hottest.Kelvins));
        // A point of the table must come back as itself, whatever the last bit of the logarithm.
        const double slack = 1e-12;
        if (log < Math.Min(cold, hot) - slack || log > Math.Max(cold, hot) + slack)
            return false;
        temperature = Temperature.FromKelvins(Math.Clamp(KelvinsAt(log), Coldest.Kelvins, Hottest.Kelvins));
        return true;
    }

    /// <summary>Slope at a temperature, Ω/K; negative for a sensor that falls as it warms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the range.</exception>
    public double SlopeAt(Temperature temperature)
    {
        const double step = 0.05;
        var kelvins = Require.InRange(temperature.Kelvins, Coldest.Kelvins, Hottest.Kelvins, "K");
        var (low, high) = (Math.Max(kelvins - step, Coldest.Kelvins), Math.Min(kelvins + step, Hottest.Kelvins));
        return (Math.Exp(LogOhms(high)) - Math.Exp(LogOhms(low))) / (high - low);
    }

    /// <summary>Makes a curve from table points: ln R straight against 1/T between them.</summary>
    /// <param name="points">Two or more, in any order.</param>
    /// <param name="curve">Null when there is a problem.</param>
    /// <param name="problem">What is wrong with the points, naming the temperature; null when nothing is.</param>
    public static bool TryFromTable(
        IEnumerable<SensorPoint> points, [NotNullWhen(true)] out SensorCurve? curve,
            [NotNullWhen(false)] out string? problem)
    {
        ImmutableArray<SensorPoint> sorted = [.. points.OrderBy(point => point.Celsius)];
        problem = TableCurve.ProblemOf(sorted);
        curve = problem is null ? new TableCurve(sorted) : null;
        return curve is not null;
    }

    /// <summary>Makes a curve from the Steinhart–Hart law 1/T = A + B ln R + C (ln R)³.</summary>
    /// <param name="a">1/K.</param>
    /// <param name="b">1/K, above 0.</param>
    /// <param name="c">1/K, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coefficient is outside its range.</exception>
    /// <remarks>Source: Steinhart &amp; Hart, Deep-Sea Research 15, 1968.</remarks>
    public static SensorCurve SteinhartHart(double a, double b, double c, Temperature coldest, Temperature hottest) =>
        new SteinhartHartCurve(a, Require.Positive(b, "1/K"), Require.NotNegative(c, "1/K"), coldest, hottest);

    /// <summary>Makes a curve from the beta law R = R25 exp(B (1/T − 1/298.15 K)).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The resistance or beta is not above 0.</exception>
    /// <remarks>An approximation, about 1 K off at 0 °C; source: IEC 60539-1 (clause from memory).</remarks>
    public static SensorCurve Beta(Resistance at25, TemperatureDelta beta, Temperature coldest, Temperature hottest) =>
        new BetaCurve(Require.Positive(at25.Ohms, "Ω"), Require.Positive(beta.Kelvins, "K"), coldest, hottest);

    private protected abstract double LogOhms(double kelvins);

    private protected abstract double KelvinsAt(double logOhms);
}
