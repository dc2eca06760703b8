using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Air;

/// <summary>Temperatures against the air: splits and targets, by name.</summary>
internal static class SplitCalculations
{
    private static readonly Citation Rule = Citation.CommonPractice with { Place =
        "target superheat of a fixed orifice; the unit's own chart comes first, and it is not for electronic valves" };

    private static readonly Citation Sheet = new("The series' own service sheet", "temperature split");

    public static ImmutableArray<Calculation> All =>
    [
        new("air-split", "Temperature split of the air", "split = |T_return - T_supply|, ends included", Sheet,
            [CalculationInput.Temperature("T_return"), CalculationInput.Temperature("T_supply"), Kelvins("low"),
                Kelvins("high")],
            [new("split", Units.Kelvin, "T_return"), new("side", null)], OfAir),
        new("sat-split", "Saturation temperature against the air", "split = T_sat(p_gauge + p_atm) - T_air",
            RefrigerantCalculations.Equations,
            [CalculationInput.Word("refrigerant"), CalculationInput.Gauge("p_gauge"),
                CalculationInput.Atmosphere("p_atm"), CalculationInput.Word("curve", "bubble", "dew"),
                CalculationInput.Temperature("T_air")],
            [new("T_sat", Units.Celsius, "T_air"), new("split", Units.Kelvin, "T_air")],
            given => RefrigerantCalculations.Difference(given, given.Word("curve"), -1, "T_air")),
        new("target-superheat", "Target superheat of a fixed orifice",
            "target = (3 T_wb - 80 - T_outdoor) / 2 in degrees Fahrenheit", Rule,
            [CalculationInput.Temperature("T_wb_indoor").Within(5, 30), CalculationInput.Temperature("T_db_outdoor")
                .Within(10, 50)],
            [new("target", Units.Kelvin, "T_db_outdoor")], Target),
    ];

    private static CalculationInput Kelvins(string name) =>
        CalculationInput.NotNegative(name, Units.Kelvin).Within(0, 200);

    private static CalculationResult OfAir(Given given)
    {
        if (given["low"] > given["high"])
            return Given.Invalid("low is above high");
        var split = Math.Abs(given["T_return"] - given["T_supply"]);
        return given.Answer(split, Side.Of(split, given["low"], given["high"]));
    }

    private static CalculationResult Target(Given given)
    {
        double Fahrenheit(string name) => Units.Fahrenheit.FromSi(given[name]);
        var degrees = (3 * Fahrenheit("T_wb_indoor") - 80 - Fahrenheit("T_db_outdoor")) / 2;
        return degrees < 0 ? Given.OutOfRange("no superheat is left at these temperatures: the rule has no target")
            : given.Answer(degrees * 5 / 9);
    }
}
