using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>Charge limits of flammable refrigerants: equation and inputs; the legal limit is the standard's and the
/// unit's own papers'.</summary>
public static class Flammability
{
    private const double GasConstant = 8.314462618;

    public static readonly Citation Classes = new("ASHRAE 34 / ISO 817", "safety classes");
    public static readonly Citation IdealGas = Citation.Textbook(
        "ideal gas; reproduces 0.306 kg/m3 of IEC 60335-2-40 Annex BB for R-32");
    public static readonly Citation Charges = new("IEC 60335-2-40, ISO 5149, EN 378", "m1, m2, m3");
    public static readonly Citation Room = new("IEC 60335-2-40", "Annex GG");
    public static readonly Citation NewerRoom = new("IEC 60335-2-40, editions from 2018",
        "A2L; second-hand, check against the standard", CitationStanding.FromMemory);
    public static readonly Citation Mixed = new("ISO 5149, EN 378 (20 % of LFL); ASHRAE 34 (25 %)", "practical limit",
        CitationStanding.FromMemory);

    /// <summary>Flammability limit by mass, kg/m³, from the share of volume.</summary>
    /// <param name="share">1 is pure.</param>
    /// <param name="kilogramsPerMole">Molar mass, kg/mol.</param>
    public static double MassLimit(double share, double kilogramsPerMole, Temperature temperature,
        AbsolutePressure pressure) =>
        share * kilogramsPerMole * pressure.Pascals / (GasConstant * temperature.Kelvins);

    /// <summary>Largest charge of a room: m = 2.5 LFL^(5/4) h0 √A, in kg.</summary>
    public static Mass LargestCharge(Density limit, Length height, Area floor) =>
        Mass.FromKilograms(2.5 * Math.Pow(limit.KilogramsPerCubicMeter, 1.25) * height.Meters * Math.Sqrt(
            floor.SquareMeters));

    /// <summary>Least floor for a charge: the same equation solved for A.</summary>
    public static Area LeastFloor(Density limit, Length height, Mass charge)
    {
        var root = charge.Kilograms / (2.5 * Math.Pow(limit.KilogramsPerCubicMeter, 1.25) * height.Meters);
        return Area.FromSquareMeters(root * root);
    }

    /// <summary>Least floor by the second term of the newer rule for A2L: A = m / (0.75 LFL h0).</summary>
    public static Area LeastFloorBySpread(Density limit, Length height, Mass charge) =>
        Area.FromSquareMeters(charge.Kilograms / (0.75 * limit.KilogramsPerCubicMeter * height.Meters));
}
