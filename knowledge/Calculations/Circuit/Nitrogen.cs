using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>Nitrogen shut into a constant volume: what a pressure test does when the day warms or cools.</summary>
public static class Nitrogen
{
    public static readonly Citation IdealLaw = Citation.Textbook("Gay-Lussac at constant volume");

    public static readonly Citation EquationOfState = new(
        "Span, Lemmon, Jacobsen, Wagner & Yokozeki, J. Phys. Chem. Ref. Data 29(6):1361 (2000)",
            "equation of state of nitrogen");

    private const double CriticalKelvins = 126.192;
    private const double CriticalMolesPerCubicMeter = 11_183.9;
    private const double GasConstant = 8.31451;

    // n, power of density, power of inverse temperature, power in the exponential (0: none). The four Gaussian terms of
    // the equation matter only next to the critical point and are left out: below 1e-60 for a gas at room temperature.
    private static readonly (double N, int D, double T, int L)[] Terms =
    [
        (0.924803575275, 1, 0.25, 0), (-0.492448489428, 1, 0.875, 0), (0.661883336938, 2, 0.5, 0),
        (-1.92902649201, 2, 0.875, 0),
        (-0.0622469309629, 3, 0.375, 0), (0.349943957581, 3, 0.75, 0), (0.564857472498, 1, 0.5, 1),
        (-1.61720005987, 1, 0.75, 1),
        (-0.481395031883, 1, 2, 1), (0.421150636384, 3, 1.25, 1), (-0.0161962230825, 3, 3.5, 1),
        (0.172100994165, 4, 1, 1),
        (0.00735448924933, 6, 0.5, 1), (0.0168077305479, 6, 3, 1), (-0.00107626664179, 7, 0, 1),
        (-0.0137318088513, 7, 2.75, 1),
        (0.000635466899859, 8, 0.75, 1), (0.00304432279419, 8, 2.5, 1), (-0.0435762336045, 1, 4, 2),
        (-0.0723174889316, 2, 6, 2),
        (0.0389644315272, 3, 6, 2), (-0.021220136391, 4, 3, 2), (0.00408822981509, 5, 3, 2),
        (-5.51990017984e-05, 8, 6, 2),
        (-0.0462016716479, 4, 16, 3), (-0.00300311716011, 5, 11, 3), (0.0368825891208, 5, 15, 3),
        (-0.0025585684622, 8, 12, 3),
        (0.00896915264558, 3, 12, 4), (-0.0044151337035, 5, 7, 4), (0.00133722924858, 6, 4, 4),
        (0.000264832491957, 9, 16, 4),
    ];

    /// <summary>Absolute pressure after a change of temperature, ideal gas: p2 = p1 T2 / T1.</summary>
    public static AbsolutePressure Ideal(AbsolutePressure first, Temperature atFirst, Temperature wanted) =>
        AbsolutePressure.FromPascals(first.Pascals * wanted.Kelvins / atFirst.Kelvins);

    /// <summary>Absolute pressure after a change of temperature, real nitrogen at constant density.</summary>
    /// <param name="first">Up to 20 MPa.</param>
    /// <param name="atFirst">200 K to 500 K, ends included.</param>
    /// <param name="wanted">200 K to 500 K, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public static AbsolutePressure Real(AbsolutePressure first, Temperature atFirst, Temperature wanted)
    {
        Require.InRange(first.Pascals, 0, 20e6, "Pa");
        Require.InRange(atFirst.Kelvins, 200, 500, "K");
        Require.InRange(wanted.Kelvins, 200, 500, "K");
        var (low, high) = (0.0, CriticalMolesPerCubicMeter);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Pascals(middle, atFirst.Kelvins) < first.Pascals ? (middle, high) : (low, middle);
        }
        return AbsolutePressure.FromPascals(Pascals((low + high) / 2, wanted.Kelvins));
    }

    private static double Pascals(double molesPerCubicMeter, double kelvins)
    {
        var (delta, tau) = (molesPerCubicMeter / CriticalMolesPerCubicMeter, CriticalKelvins / kelvins);
        var sum = 1.0;
        foreach (var (n, d, t, l) in Terms)
        {
            var power = l == 0 ? 0 : Math.Pow(delta, l);
            sum += n * Math.Pow(delta, d) * Math.Pow(tau, t) * Math.Exp(-power) * (d - l * power);
        }
        return molesPerCubicMeter * GasConstant * kelvins * sum;
    }
}
