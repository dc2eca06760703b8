using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>Pressure switches, by name.</summary>
internal static class PressureSwitchCalculations
{
    private static readonly Citation Contact =
        Citation.Textbook("a switch opens at its cut-out and closes at its cut-in");

    public static ImmutableArray<Calculation> All =>
    [
        new("switch-state", "State of a pressure switch",
            "high: open from cut_out up, closed from cut_in down; low: open from cut_out down, closed from cut_in up; "
                + "between them it stays as it was",
            Contact,
            [CalculationInput.Word("kind", "high", "low"), CalculationInput.Gauge("p"),
                CalculationInput.Gauge("cut_out"),
                CalculationInput.Gauge("cut_in")],
            [new("state", null)], State),
    ];

    private static CalculationResult State(Given given)
    {
        var sign = given.Word("kind") == "high" ? 1 : -1;
        var (pressure, open, close) = (sign * given["p"], sign * given["cut_out"], sign * given["cut_in"]);
        return open <= close
            ? Given.Invalid(
                $"cut_out must lie {(sign > 0 ? "above" : "below")} cut_in in a {given.Word("kind")}-pressure switch")
            : given.Answer(pressure >= open ? "open" : pressure <= close ? "closed" : "as it was");
    }
}
