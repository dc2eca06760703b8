using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>The refrigerants held, with their saturation equations.</summary>
/// <remarks>
/// auxiliary equations fitted to the equation of state named, within 0.02 % of it. R-410A: the
/// paper's own bubble and dew equations. R-454B: fitted to a mixture model, −45 to 50 °C only; lower confidence.
/// Classes: ASHRAE 34 and ISO 817. Lower flammability limits: IEC 60335-2-40 Annex BB (R-32 0.306; ISO 817 has 0.307).
/// R-454B's limit is not held: no source seen.
/// </remarks>
internal static class Refrigerants
{
    private static readonly SaturationCurve R32 = new SaturationCurve.Reduced(
        351.255, 5782000.0, 136.34,
        [(0.019194334673139708, 0.531), (-6.794802163795212, 0.979), (9.276391392786632, 2.203),
            (-12.327153852761946, 2.382), (28.46579606476374, 3.421), (-28.570870718190093, 3.558)]);

    private static readonly SaturationCurve R410ABubble = new SaturationCurve.Reduced(
        344.494, 4901200.0, 200,
        [(-7.2818, 1.0), (2.5093, 1.8), (-3.2695, 2.4), (-2.8022, 4.9)]);

    private static readonly SaturationCurve R410ADew = new SaturationCurve.Reduced(
        344.494, 4901200.0, 200,
        [(-7.4411, 1.0), (1.9883, 1.6), (-2.4925, 2.4), (-3.2633, 5.0)]);

    private static readonly SaturationCurve R22 = new SaturationCurve.Reduced(
        369.295, 4990000.0, 115.73,
        [(-7.2670371701641265, 0.999), (1.2860929616388512, 1.272), (-0.10790119794275199, 1.692),
            (-0.989473291657183, 2.74), (-2.9393096353041623, 4.539), (0.488431917326884, 15.876)]);

    private static readonly SaturationCurve R290 = new SaturationCurve.Reduced(
        369.89, 4251200.0, 85.525,
        [(-23.998635747391152, 1.05), (18.313017605233238, 1.084), (-0.42240851966839504, 2.259),
            (-2.7378298813798962, 4.287), (0.257888414168987, 7.66), (-1.3113462226130785, 18.584)]);

    private static readonly SaturationCurve R454BBubble = new SaturationCurve.Series(
        228.15, 323.15, [19.706227025, -23.2670504137, 19.6687362422, -10.8594211523, 2.1596816293]);

    private static readonly SaturationCurve R454BDew = new SaturationCurve.Series(
        228.15, 323.15, [21.6444320559, -29.6148916737, 27.3828035294, -15.0569347449, 3.01769313633]);

    public static readonly ImmutableArray<Refrigerant> All =
    [
        Pure("R-22", R22, "A1", null, "Kamei, Beyerlein & Jacobsen, Int. J. Thermophys. 16(5):1155 (1995)"),
        Pure("R-290", R290, "A3", 0.038, "Lemmon, McLinden & Wagner, J. Chem. Eng. Data 54:3141 (2009)"),
        Pure("R-32", R32, "A2L", 0.306, "Tillner-Roth & Yokozeki, J. Phys. Chem. Ref. Data 26(6):1273 (1997)"),
        new("R-410A", R410ABubble, R410ADew, true, "A1", null,
            new Citation("Lemmon, Int. J. Thermophys. 24(4):991 (2003)", "bubble and dew equations")),
        new("R-454B", R454BBubble, R454BDew, true, "A2L", null,
            new Citation("Akasaka, Fluid Phase Equilib. (2013)", "fit to a mixture model, lower confidence")),
        new("R-1234yf", null, null, false, "A2L", 0.289,
            new Citation("ASHRAE 34 and ISO 817", "class and flammability limit only")),
    ];

    private static Refrigerant Pure(string name, SaturationCurve curve, string safetyClass, double? flammableFrom,
        string source) =>
        new(name, curve, curve, false, safetyClass, flammableFrom,
            new Citation(source, "auxiliary equation fitted to it"));
}
