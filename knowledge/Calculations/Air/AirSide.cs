using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Air;

/// <summary>Heat that air gives up at a coil.</summary>
public static class AirSide
{
    public static readonly Citation Factors = new("Air-side factors of standard air, 0.075 lb/ft3",
        "1.08 sensible, 4.5 total; derivation from memory");
    public static readonly Citation States = new("ASHRAE Fundamentals", "chapter 1; condensate enthalpy neglected");

    /// <summary>Heat at a coil from the states before and after it.</summary>
    /// <param name="flow">At the inlet.</param>
    /// <param name="ratioIn">kg of water to 1 kg of dry air.</param>
    /// <param name="ratioOut">kg of water to 1 kg of dry air.</param>
    /// <returns>Dry air in kg/s, total and sensible heat in W, condensate in kg/s.</returns>
    public static (double DryAir, double Total, double Sensible, double Condensate) Coil(
        AirFlow flow, Temperature inlet, double ratioIn, Temperature outlet, double ratioOut, AbsolutePressure pressure)
    {
        var dryAir = flow.CubicMetersPerSecond / MoistAir.Volume(inlet, ratioIn, pressure);
        var total = dryAir * (MoistAir.Enthalpy(inlet, ratioIn) - MoistAir.Enthalpy(outlet, ratioOut));
        var sensible = dryAir * 1000 * (1.006 + 1.86 * ratioOut) * (inlet - outlet).Kelvins;
        return (dryAir, total, sensible, dryAir * (ratioIn - ratioOut));
    }
}
