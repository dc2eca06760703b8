using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Air;

/// <summary>Water by the clock, by name.</summary>
internal static class FlowCalculations
{
    private static readonly Citation Filling = Citation.Textbook("volume over time");

    private static readonly CalculationInput Volume = CalculationInput.Positive("V", Units.CubicMeter)
        .Within(1e-9, 1e3);

    public static ImmutableArray<Calculation> All =>
    [
        new("float-time", "Time until water lifts a float", "t = V / flow", Filling,
            [Volume, Flow("flow")], [new("t", Units.Second)],
            given => given.Answer(given["V"] / given["flow"])),
        new("flow-time", "Flow of a drain or pump from a measured volume",
            "flow = V / t, share = flow / flow_rated", Filling,
            [Volume, CalculationInput.Positive("t", Units.Second).Within(1e-3, 1e6), Flow("flow_rated")],
            [new("flow", Units.CubicMeterPerSecond, "flow_rated"), new("share", Units.Percent)],
            given => given.Answer(given["V"] / given["t"], given["V"] / given["t"] / given["flow_rated"])),
    ];

    private static CalculationInput Flow(string name) =>
        CalculationInput.Positive(name, Units.CubicMeterPerSecond).Within(1e-12, 1e3);
}
