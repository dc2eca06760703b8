using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Air;

/// <summary>Pressure of the air against altitude.</summary>
public static class StandardAtmosphere
{
    public static readonly Citation Standard = new("ISO 2533, standard atmosphere",
        "also ASHRAE Fundamentals chapter 1");

    /// <summary>Pressure of the standard atmosphere at an altitude.</summary>
    /// <param name="meters">Geopotential altitude, m; −5,000 to 11,000, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="meters"/> is outside that range or
    /// NaN.</exception>
    /// <remarks>Source: ISO 2533, standard atmosphere (equation; clause from memory).</remarks>
    public static AbsolutePressure PressureAt(double meters) => AbsolutePressure.FromPascals(
        101_325 * Math.Pow(1 - 2.25577e-5 * Require.InRange(meters, -5_000, 11_000, "m"), 5.25588));
}
