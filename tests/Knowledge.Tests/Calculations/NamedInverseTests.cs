using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>Named calculations that undo one another give the start back; what physics says rises or falls
/// does.</summary>
public sealed class NamedInverseTests
{
    private const int Seed = 7_310;

    // there | output of it | back | input of it that is the output | output that is the start again | the start | range
    [Theory]
    [InlineData("ntc-beta-r", "R", "ntc-beta-t", "R", "T", "T", -40, 120, "degC")]
    [InlineData("pt1000-r", "R", "pt1000-t", "R", "T", "T", -199, 849, "degC")]
    [InlineData("cu-r", "R2", "cu-t", "R2", "T2", "T2", -50, 200, "degC")]
    [InlineData("m-max", "m_max", "a-min", "m", "A_min", "A", 1, 200, "m2")]
    [InlineData("vac-micron-pa", "p_Pa", "vac-pa-micron", "p", "p_micron", "p", 1, 760_000, "micron")]
    [InlineData("ref-sat-r32", "p_bubble", "ref-tsat", "p", "T_sat", "T", -60, 70, "degC")]
    [InlineData("ref-sat-r22", "p_bubble", "ref-tsat", "p", "T_sat", "T", -60, 90, "degC")]
    [InlineData("ref-sat-r290", "p_bubble", "ref-tsat", "p", "T_sat", "T", -60, 90, "degC")]
    [InlineData("ref-sat-r410a", "p_bubble", "ref-tsat", "p", "T_sat", "T", -60, 70, "degC")]
    [InlineData("ref-sat-r454b", "p_bubble", "ref-tsat", "p", "T_sat", "T", -45, 50, "degC")]
    public void Run_ThereAndBack_IsTheStart(
        string there, string result, string back, string taken, string again, string start, double from, double to,
        string unit)
    {
        var random = new Random(Seed);
        var (first, second) = (CheckCase.All[there + "-01"].AsInputs(), CheckCase.All[back + "-01"].AsInputs());
        for (var run = 0; run < 200; run++)
        {
            var value = from + (to - from) * random.NextDouble();
            var given = first.SetItem(start, Number(value, unit));
            var found = Value(there, given, result);
            var known = CalculationCatalogue.All[back].Inputs.Select(input => input.Name);
            var returned = second;
            foreach (var name in known.Where(name => name != taken && given.ContainsKey(name)))
                returned = returned.SetItem(name, given[name]);
            var end = Value(back, returned.SetItem(taken, new CalculationValue.Number(found)), again);
            Assert.True(Unit.TryParse(unit, end.Unit.Kind, out var same));
            Assert.True(Math.Abs(end.In(same).Value - value) <= 1e-6 * Math.Max(1, Math.Abs(value)),
                $"{there}, seed {Seed}: {value} came back as {end}");
        }
    }

    [Theory]
    [InlineData("ntc-beta-r", "T", "R", -1, -40, 120, "degC")]
    [InlineData("pt1000-r", "T", "R", 1, -200, 850, "degC")]
    [InlineData("cu-r", "T2", "R2", 1, -60, 200, "degC")]
    [InlineData("coil-r", "T", "R", 1, -60, 200, "degC")]
    [InlineData("atm-alt", "altitude", "p_atm", -1, -4_000, 10_000, "m")]
    [InlineData("ir-corr-halving", "T_winding", "IR_40", 1, -50, 200, "degC")]
    [InlineData("ir-corr-2013", "T_winding", "IR_40", 1, 10, 85, "degC")]
    [InlineData("psy-psat", "T", "p_ws", 1, -90, 190, "degC")]
    [InlineData("m-max", "A", "m_max", 1, 1, 200, "m2")]
    [InlineData("cap-load", "I", "C", 1, 0.1, 40, "A")]
    [InlineData("cap-load", "V", "C", -1, 50, 400, "V")]
    [InlineData("superheat", "T_line", "superheat", 1, -20, 40, "degC")]
    [InlineData("superheat", "p_gauge", "superheat", -1, 300, 1_500, "kPa_gauge")]
    [InlineData("subcooling", "p_gauge", "subcooling", 1, 1_000, 3_500, "kPa_gauge")]
    [InlineData("n2-press-si", "T2", "p2_gauge", 1, -20, 50, "degC")]
    [InlineData("vd-1ph", "I", "drop", 1, 0.1, 100, "A")]
    [InlineData("target-superheat", "T_db_outdoor", "target", -1, 20, 45, "degC")]
    public void Run_InputRising_MovesTheResultOneWay(
        string name, string input, string result, int direction, double from, double to, string unit)
    {
        var inputs = CheckCase.All.Values.First(item => item.Kind == name && !item.Expected.ContainsKey("status"))
            .AsInputs();
        double? before = null;
        for (var step = 0; step <= 300; step++)
        {
            var value = from + (to - from) * step / 300;
            if (CalculationCatalogue.All[name].Run(
                inputs.SetItem(input, Number(value, unit))) is not CalculationResult.Answer answer)
                continue;
            var now = ((CalculationValue.Number)answer.Values.First(term => term.Symbol == result).Value).Quantity.Si;
            Assert.True(before is null || direction * (now - before) > 0, $"{name} at {value} {unit}");
            before = now;
        }
        Assert.NotNull(before);
    }

    private static CalculationValue.Number Number(double value, string unit) =>
        Unit.TryParse(unit, out var known) ? new CalculationValue.Number(new Quantity(value, known))
            : throw new ArgumentException(unit);

    private static Quantity Value(
        string name, ImmutableSortedDictionary<string, CalculationValue> inputs, string output)
    {
        var result = CalculationCatalogue.All[name].Run(inputs);
        Assert.True(result is CalculationResult.Answer, $"{name}: {result}");
        return ((CalculationValue.Number)((CalculationResult.Answer)result).Values
            .First(term => term.Symbol == output).Value).Quantity;
    }
}
