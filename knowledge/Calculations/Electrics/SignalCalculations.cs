using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Signals between boards, by name.</summary>
internal static class SignalCalculations
{
    private static readonly Citation Line = new("The series' own service sheet", "least swing of a live signal");

    public static ImmutableArray<Calculation> All =>
    [
        new("signal-swing", "Swing of a signal line", "swing = highest - lowest, alive from least_swing up", Line,
            [Volts("lowest"), Volts("highest"), CalculationInput.Positive("least_swing", Units.Volt)
                .Within(1e-3, 1_000)],
            [new("swing", Units.Volt), new("alive", null)],
            given => given["highest"] < given["lowest"] ? Given.Invalid("highest is below lowest")
                : given.Answer(given["highest"] - given["lowest"],
                    given["highest"] - given["lowest"] >= given["least_swing"])),
    ];

    private static CalculationInput Volts(string name) =>
        CalculationInput.Number(name, Units.Volt).Within(-1_000, 1_000);
}
