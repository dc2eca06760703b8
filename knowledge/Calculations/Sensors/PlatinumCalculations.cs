using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Sensors;

/// <summary>Platinum sensors, by name.</summary>
internal static class PlatinumCalculations
{
    private const string Formula = "R = R0 (1 + A T + B T^2 + C (T - 100 °C) T^3), C = 0 from 0 °C on";
    private static readonly CalculationInput IcePoint = CalculationInput.Positive("R0", Units.Ohm).Within(0.01, 1e6);
    private static readonly CalculationInput Warmth = CalculationInput.Temperature("T").Within(-200, 850);

    public static ImmutableArray<Calculation> All =>
    [
        new("pt-tol", "Limits of error of platinum sensors",
            "class_A = 0.15 K + 0.002 |T|, class_B = 0.30 K + 0.005 |T|", PlatinumSensor.Standard,
            [Warmth], [new("class_A", Units.Kelvin), new("class_B", Units.Kelvin)],
            given => given.Answer(
                PlatinumSensor.ClassAKelvins(given.Temperature("T")),
                PlatinumSensor.ClassBKelvins(given.Temperature("T")))),
        new("pt1000-r", "Resistance of a platinum sensor", Formula, PlatinumSensor.Standard,
            [IcePoint, Warmth], [new("R", Units.Ohm)],
            given => given.Answer(PlatinumSensor.ResistanceAt(given.Resistance("R0"), given.Temperature("T")))),
        new("pt1000-t", "Temperature of a platinum sensor", Formula + ", solved for T", PlatinumSensor.Standard,
            [IcePoint, CalculationInput.Positive("R", Units.Ohm).Within(1e-6, 1e9)], [new("T", Units.Celsius)],
            given => PlatinumSensor.TemperatureAt(given.Resistance("R0"), given.Resistance("R")) is { } found
                ? given.Answer(found)
                : Given.OutOfRange("R is covered for -200 to 850 °C")),
    ];
}
