using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Tests.Content;

namespace DxAssistant.Knowledge.Tests.Calculations;

public sealed class MeterRangeTests
{
    private static readonly MeterClass Meter = MeterClass.OfRanges(
    [
        Range("6 kΩ", "1 % + 3 × 0.001 kΩ"), Range("600 Ω", "1 % + 3 × 0.1 Ω"), Range("600 V", "1 % + 3 × 0.1 V"),
    ]);

    // Worked by hand: 1 % of 46 Ω and 0.3 Ω; 1 % of 2100 Ω and 3 Ω; beyond the last range that of the last.
    [Theory]
    [InlineData(46, 0.76)]
    [InlineData(600, 6.3)]
    [InlineData(601, 9.01)]
    [InlineData(2_100, 24)]
    [InlineData(10_000, 103)]
    public void At_Resistance_IsTheSmallestRangeThatFits(double ohms, double limit) =>
        Assert.Equal(limit, Meter.At(QuantityKind.Resistance, ohms).LimitOfError(ohms), 1e-9);

    [Fact]
    public void At_NegativeVoltage_CountsItsSize() =>
        Assert.Equal(1.3, Meter.At(QuantityKind.Voltage, -100).LimitOfError(-100), 1e-9);

    [Fact]
    public void At_KindItDoesNotRead_Throws()
    {
        Assert.False(Meter.Reads(QuantityKind.Current));
        Assert.Throws<ArgumentException>(() => Meter.At(QuantityKind.Current, 1));
    }

    // A check of a voltage that names an insulation tester is a mistake of the page, not of the technician.
    [Fact]
    public void Compile_MeterThatReadsSomethingElse_IsReported()
    {
        var page = TinyContent.Texts["checks/board-supply.md"];
        Assert.Contains("| meter |", page, StringComparison.Ordinal);
        var lines = page.Split('\n').Select(line => line.StartsWith("| meter |", StringComparison.Ordinal)
            ? "| meter | [Common multimeter](../meters/multimeter.md) | [Common "
                + "practice](../sources.md#common-practice) |"
            : line);
        var result = ContentCompiler.Compile(TinyContent.With("checks/board-supply.md", string.Join('\n', lines)));
        Assert.Contains(result.Diagnostics, diagnostic => diagnostic.Name == "wrong-input");
    }

    private static MeterRange Range(string upTo, string promise) => new(
        QuantityText.TryParse(upTo, out var most) ? most : throw new FormatException(upTo),
        MeterClass.TryParse(promise, out var meter) ? meter : throw new FormatException(promise));
}
