using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>Saturation pressure against temperature of one refrigerant, bubble or dew.</summary>
public abstract class SaturationCurve
{
    private protected SaturationCurve(double coldestKelvins, double hottestKelvins) =>
        (Coldest, Hottest) = (Temperature.FromKelvins(coldestKelvins), Temperature.FromKelvins(hottestKelvins));

    /// <summary>Lower end of the range, included.</summary>
    public Temperature Coldest { get; }

    /// <summary>Upper end of the range, included; the critical point where the curve goes so far.</summary>
    public Temperature Hottest { get; }

    public abstract string Formula { get; }

    public AbsolutePressure Lowest => AbsolutePressure.FromPascals(Pascals(Coldest.Kelvins));

    public AbsolutePressure Highest => AbsolutePressure.FromPascals(Pascals(Hottest.Kelvins));

    /// <summary>Saturation pressure; false outside the range.</summary>
    public bool TryPressure(Temperature temperature, out AbsolutePressure pressure)
    {
        var inside = temperature >= Coldest && temperature <= Hottest;
        pressure = inside ? AbsolutePressure.FromPascals(Pascals(temperature.Kelvins)) : default;
        return inside;
    }

    /// <summary>Saturation temperature; false outside the range, whose ends reach as far as the equation may be
    /// off.</summary>
    /// <remarks>No closed form: the range is halved until nothing is left to halve.</remarks>
    public bool TryTemperature(AbsolutePressure pressure, out Temperature temperature)
    {
        temperature = default;
        if (!(pressure.Pascals >= Lowest.Pascals * (1 - Deviation)
            && pressure.Pascals <= Highest.Pascals * (1 + Deviation)))
            return false;
        var (low, high) = (Coldest.Kelvins, Hottest.Kelvins);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Pascals(middle) < pressure.Pascals ? (middle, high) : (low, middle);
        }
        temperature = Temperature.FromKelvins((low + high) / 2);
        return true;
    }

    /// <summary>Change of saturation temperature with pressure, K/Pa.</summary>
    public double SlopeAt(Temperature temperature)
    {
        const double step = 0.01;
        var (low, high) = (Math.Max(Coldest.Kelvins, temperature.Kelvins - step),
            Math.Min(Hottest.Kelvins, temperature.Kelvins + step));
        return (high - low) / (Pascals(high) - Pascals(low));
    }

    private protected abstract double Pascals(double kelvins);

    /// <summary>By how much, as a share, a pressure may lie past an end of the curve: no more than the equation may be
    /// off.</summary>
    private protected virtual double Deviation => 0;

    /// <summary>p = pc exp(Tc/T sum n (1 - T/Tc)^t).</summary>
    internal sealed class Reduced(double critical, double criticalPascals, double coldest,
        ImmutableArray<(double N, double T)> terms)
        : SaturationCurve(coldest, critical)
    {
        public override string Formula => "p = pc exp(Tc/T sum n (1 - T/Tc)^t)";

        private protected override double Pascals(double kelvins)
        {
            var theta = Math.Max(0, 1 - kelvins / Hottest.Kelvins);
            var sum = 0.0;
            foreach (var (n, t) in terms)
                sum += n * Math.Pow(theta, t);
            return criticalPascals * Math.Exp(Hottest.Kelvins / kelvins * sum);
        }
    }

    /// <summary>ln(p / 1 kPa) = sum c (300 K / T)^k, k = 0, 1, 2 and so on.</summary>
    internal sealed class Series(double coldest, double hottest, ImmutableArray<double> coefficients)
        : SaturationCurve(coldest, hottest)
    {
        private protected override double Deviation => 0.0005;

        public override string Formula => "ln(p / 1 kPa) = sum c_k (300 K / T)^k";

        private protected override double Pascals(double kelvins)
        {
            var (sum, power) = (0.0, 1.0);
            foreach (var coefficient in coefficients)
            {
                sum += coefficient * power;
                power *= 300 / kelvins;
            }
            return 1000 * Math.Exp(sum);
        }
    }
}
