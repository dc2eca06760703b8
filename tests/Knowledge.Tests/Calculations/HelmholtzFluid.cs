using System.Text.Json;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>A pure fluid by its reduced residual Helmholtz energy, as refrigerants.json gives it.</summary>
internal sealed class HelmholtzFluid
{
    private readonly List<double[]> _power = [];
    private readonly List<double[]> _gaussian = [];
    private readonly double _gas;
    private readonly double _kelvins;
    private readonly double _density;

    private HelmholtzFluid(JsonElement state)
    {
        (_gas, _kelvins, _density) = (Of(state, "R"), Of(state, "T_r_K"), Of(state, "rho_r_mol_m3"));
        foreach (var terms in state.GetProperty("terms").EnumerateArray())
        {
            var power = terms.GetProperty("kind").GetString() == "power";
            string[] names = power ? ["n", "t", "d", "l"] : ["n", "t", "d", "eta", "epsilon", "beta", "gamma"];
            var columns = names.Select(name => terms.GetProperty(name).EnumerateArray()
                .Select(item => item.GetDouble()).ToArray()).ToArray();
            for (var i = 0; i < columns[0].Length; i++)
                (power ? _power : _gaussian).Add([.. columns.Select(column => column[i])]);
        }
    }

    public static HelmholtzFluid Named(string name)
    {
        using var document = JsonDocument.Parse(ReferenceFiles.Read("refrigerants.json"));
        return new HelmholtzFluid(document.RootElement.GetProperty("fluids").GetProperty(name).GetProperty("eos"));
    }

    /// <summary>The pressure at which liquid and vapour are in balance, Pa.</summary>
    /// <param name="near">A pressure to begin with.</param>
    public double SaturationPascals(double kelvins, double near)
    {
        var pascals = near;
        for (var round = 0; round < 60; round++)
        {
            var liquid = Density(kelvins, pascals, 2.9 * _density);
            var vapour = Density(kelvins, pascals, pascals / (_gas * kelvins));
            var difference = Gibbs(kelvins, vapour) - Gibbs(kelvins, liquid);
            var step = difference / (1 / liquid - 1 / vapour);
            pascals += step;
            if (Math.Abs(step) < 1e-9 * pascals)
                break;
        }
        return pascals;
    }

    private double Pascals(double kelvins, double density) =>
        density * _gas * kelvins * (1 + density / _density * Slope(kelvins, density));

    // Molar, less what liquid and vapour share: R T (ln rho + alpha_r) + p / rho.
    private double Gibbs(double kelvins, double density) =>
        _gas * kelvins * (Math.Log(density) + Residual(kelvins, density)) + Pascals(kelvins, density) / density;

    // Newton from the liquid or the vapour side, in small strides.
    private double Density(double kelvins, double pascals, double start)
    {
        var density = start;
        for (var round = 0; round < 200; round++)
        {
            var slope = (Pascals(kelvins, density * 1.000001) - Pascals(kelvins, density * 0.999999))
                / (2e-6 * density);
            var step = Math.Clamp((pascals - Pascals(kelvins, density)) / slope, -0.05 * density, 0.05 * density);
            density += step;
            if (Math.Abs(step) < 1e-12 * density)
                break;
        }
        return density;
    }

    private double Residual(double kelvins, double density)
    {
        var (delta, tau) = (density / _density, _kelvins / kelvins);
        return _power.Sum(term => Power(term, delta, tau)) + _gaussian.Sum(term => Gaussian(term, delta, tau));
    }

    // Derivative of the residual by the reduced density.
    private double Slope(double kelvins, double density)
    {
        var (delta, tau) = (density / _density, _kelvins / kelvins);
        return _power.Sum(term => Power(term, delta, tau)
                * (term[2] - (term[3] > 0 ? term[3] * Math.Pow(delta, term[3]) : 0)) / delta)
            + _gaussian.Sum(term => Gaussian(term, delta, tau)
                * (term[2] / delta - 2 * term[3] * (delta - term[4])));
    }

    private static double Power(double[] term, double delta, double tau) =>
        term[0] * Math.Pow(delta, term[2]) * Math.Pow(tau, term[1])
            * (term[3] > 0 ? Math.Exp(-Math.Pow(delta, term[3])) : 1);

    private static double Gaussian(double[] term, double delta, double tau) =>
        term[0] * Math.Pow(delta, term[2]) * Math.Pow(tau, term[1])
            * Math.Exp(-term[3] * (delta - term[4]) * (delta - term[4]) - term[5] * (tau - term[6]) * (tau - term[6]));

    private static double Of(JsonElement element, string name) => element.GetProperty(name).GetDouble();
}
