using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>Refrigerant safety, by name.</summary>
internal static class FlammabilityCalculations
{
    private static readonly CalculationInput Limit = CalculationInput.Positive("LFL", Units.KilogramPerCubicMeter)
        .Within(1e-4, 10);
    private static readonly CalculationInput Height = CalculationInput.Positive("h0", Units.Meter).Within(0.01, 100);
    private static readonly CalculationInput Charge = CalculationInput.NotNegative("m", Units.Kilogram).Within(0, 1e5);
    private static readonly CalculationInput Which = CalculationInput.Word("refrigerant");

    public static ImmutableArray<Calculation> All =>
    [
        new("a-min", "Least floor for a charge", "A_min = (m / (2.5 LFL^(5/4) h0))^2", Flammability.Room,
            [Limit, Height, Charge], [new("A_min", Units.SquareMeter)], given => given.Answer(ByRoom(given))),
        new("a-min-a2l", "Least floor for a charge, A2L",
            "A_min = larger of (m / (2.5 LFL^(5/4) h0))^2 and m / (0.75 LFL h0); 0 up to m1 = 6 LFL",
            Flammability.NewerRoom,
            [Limit, Height, Charge], [new("A_min_gg", Units.SquareMeter), new("A_min_075", Units.SquareMeter),
                new("A_min", Units.SquareMeter)], NewerRoom),
        new("leak-conc", "Concentration after a leak", "concentration = m / V, fraction = concentration / LFL",
            Flammability.Mixed,
            [Charge, CalculationInput.Positive("V", Units.CubicMeter).Within(1e-6, 1e7), Limit],
            [new("concentration", Units.KilogramPerCubicMeter), new("fraction_of_LFL", Units.Percent)],
            given => given.Answer(given["m"] / given["V"], given["m"] / given["V"] / given["LFL"])),
        new("lfl-convert", "Flammability limit by mass", "LFL_mass = LFL M p / (R T)", Flammability.IdealGas,
            [CalculationInput.Number("LFL", Units.Percent, new Bounds(0, 100, LeastIncluded: false)),
                CalculationInput.Positive("M", Units.KilogramPerMole).Within(1e-3, 10),
                CalculationInput.Temperature("T"), CalculationInput.Positive("p", Units.KiloPascalAbsolute)
                    .Within(1, 10_000)],
            [new("LFL_mass", Units.KilogramPerCubicMeter)],
            given => given.Answer(Flammability.MassLimit(
                given["LFL"], given["M"], given.Temperature("T"), given.Absolute("p")))),
        new("m-max", "Largest charge of a room", "m_max = 2.5 LFL^(5/4) h0 sqrt(A)", Flammability.Room,
            [Limit, Height, CalculationInput.Positive("A", Units.SquareMeter).Within(0, 1e7)],
            [new("m_max", Units.Kilogram)],
            given => given.Answer(Flammability.LargestCharge(
                Density(given), Length.FromMeters(given["h0"]), Area.FromSquareMeters(given["A"])).Kilograms)),
        new("m123", "Charge limits m1, m2, m3",
            "m1 = 4 LFL, m2 = 26 LFL, m3 = 130 LFL, in kg with LFL in kg/m3; editions from 2018 use m1 = 6 LFL for A2L",
            Flammability.Charges,
            [Which, Limit], [new("m1", Units.Kilogram), new("m2", Units.Kilogram), new("m3", Units.Kilogram)], Charges),
        new("safety-class", "Safety class of a refrigerant", "table", Flammability.Classes, [Which],
            [new("class", null)],
            given => Refrigerant.Find(given.Word("refrigerant")) is { } held ? given.Answer(held.SafetyClass)
                : Unknown(given)),
    ];

    private static Density Density(Given given) => Quantities.Density.FromKilogramsPerCubicMeter(given["LFL"]);

    private static double ByRoom(Given given) => Flammability.LeastFloor(
        Density(given), Length.FromMeters(given["h0"]), Mass.FromKilograms(given["m"])).SquareMeters;

    private static CalculationResult NewerRoom(Given given)
    {
        var (room, spread) = (ByRoom(given), Flammability.LeastFloorBySpread(
            Density(given), Length.FromMeters(given["h0"]), Mass.FromKilograms(given["m"])).SquareMeters);
        var free = Side.IsInside(given["m"], 0, 6 * given["LFL"]);
        return given.Answer(room, spread, free ? 0 : Math.Max(room, spread));
    }

    private static CalculationResult Charges(Given given) =>
        Refrigerant.Find(given.Word("refrigerant")) is { SafetyClass: "A1" }
            ? Given.Invalid("refrigerant does not burn: it has no flammability limit")
            : given.Answer(4 * given["LFL"], 26 * given["LFL"], 130 * given["LFL"]);

    private static CalculationResult Unknown(Given given)
    {
        var message = $"refrigerant is covered for {string.Join(", ", Refrigerant.All.Select(held => held.Name))}";
        return Refrigerant.LooksLikeOne(given.Word("refrigerant")) ? Given.OutOfRange(message) : Given.Invalid(message);
    }
}
