using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Content;

public class JudgeInputsTests
{
    private static readonly Library Tiny = ContentCompiler.Compile(TinyContent.Folder).Library!;
    private static readonly CheckPage Sensor = Tiny.Checks[new CheckId("room-sensor")];

    [Fact]
    public void JudgeInputsFor_SeriesCurve_IsTheCurveOfThatSeries()
    {
        var inputs = Tiny.JudgeInputsFor(Sensor, Tiny.Series["alder-one"]);
        Assert.Equal(["curve", "meter", "thermometer", "tolerance"], inputs.Keys);
        Assert.Same(Tiny.Curves["room-10k"].Curve, Assert.IsType<JudgeInput.Curve>(inputs["curve"]).Value);
        Assert.Equal(2, Assert.IsType<JudgeInput.Number>(inputs["tolerance"]).Value.Si);
    }

    [Theory]
    [InlineData("R-99", "known: `R-22`, `R-290`, `R-32`, `R-410A`, `R-454B`")]
    [InlineData("R-410B", "did you mean `R-410A`?")]
    [InlineData("R-1234yf", "known: `R-22`, `R-290`, `R-32`, `R-410A`, `R-454B`")]
    public void Compile_RefrigerantWithoutCurve_IsAnErrorAtItsCell(string refrigerant, string help)
    {
        string page = TinyContent.Texts["checks/board-supply.md"]
            .Replace("calculation: band", "calculation: saturation-split")
            .Replace("| board supply | V | 0 V to 30 V | The two marked points |",
                "| pressure | kPa | 0 kPa to 5000 kPa | Port |\n| air | °C | −40 °C to 80 °C | Air |")
            .Replace("| low | 11.4 V |",
                $"| refrigerant | {refrigerant} | [Common practice](../sources.md#common-practice) |\n| low | 5 K |")
                .Replace("12.6 V", "15 K")
            .Replace("| meter | 0.5 % + 2 × 0.01 V |",
                "| gauge | 20 kPa | [Common practice](../sources.md#common-practice) |\n| thermometer | 1 K |");
        Diagnostic found =
            Assert.Single(ContentCompiler.Compile(TinyContent.With("checks/board-supply.md", page)).Diagnostics);
        Assert.Equal(("wrong-input", help), (found.Name, found.Help));
    }

    [Fact]
    public void JudgeInputsFor_AnotherSeries_Throws() => Assert.Throws<ArgumentException>(
        () => Tiny.JudgeInputsFor(Sensor, Tiny.Series["alder-one"] with { Id = "birch-two" }));

    [Fact]
    public void JudgeInputsFor_CheckThatCalculatesNothing_Throws() => Assert.Throws<ArgumentException>(
        () => Tiny.JudgeInputsFor(Tiny.Checks[new CheckId("fan-plug")], Tiny.Series["alder-one"]));

    // The tiny curve gives 10 kΩ at 25 °C.
    [Theory]
    [InlineData(10, VerdictKind.Within)]
    [InlineData(5, VerdictKind.Low)]
    public void JudgeInputsFor_SensorReadings_CanBeJudged(double kiloOhms, VerdictKind expected)
    {
        var request = new JudgeRequest(
            [Reading.Of(kiloOhms, Sensor.Readings[0].Unit), Reading.Of(25, Sensor.Readings[1].Unit)],
            Tiny.JudgeInputsFor(Sensor, Tiny.Series["alder-one"]));
        Assert.Equal(expected, JudgeCatalogue.All[Sensor.Calculation!].Judge(request).Verdict);
    }

    [Fact]
    public void Compile_Readings_HaveUnitsAndRangesInTheSiBase()
    {
        ReadingField resistance = Sensor.Readings[0];
        Assert.Equal((Units.KiloOhm, 0.0, 2_000_000.0), (resistance.Unit, resistance.Lowest, resistance.Highest));
        Assert.Equal((-20.0, 60.0), (Sensor.Readings[1].Lowest, Sensor.Readings[1].Highest));
        Assert.Equal("Thermometer beside the sensor", Sensor.Readings[1].Where.Text);
        Assert.Equal([VerdictKind.Low, VerdictKind.High], Sensor.Outcomes[1].Verdicts.AsEnumerable());
    }

    [Theory]
    [InlineData("0.5 % + 2 × 0.01 Ω")] // counts of resistance at a voltage
    [InlineData("accurate")]
    [InlineData("230 V supply")]
    public void Compile_MeterThatCannotBe_IsAWrongInput(string meter)
    {
        string text = TinyContent.Texts["checks/board-supply.md"].Replace("0.5 % + 2 × 0.01 V", meter);
        Diagnostic found = Assert.Single(
            ContentCompiler.Compile(TinyContent.With("checks/board-supply.md", text)).Diagnostics);
        Assert.Equal(("wrong-input", 27, meter.Length), (found.Name, found.At.Line, found.At.Length));
    }

    [Fact]
    public void Compile_RatingOfAnotherKind_IsBlamedOnTheSeriesOnce()
    {
        // Two checks take the supply of the series as their limit; it stands there in amperes.
        ContentFolder folder = ContentFolder.Of(TinyContent.Folder.Files.Select(file => file with
        {
            Text = file.Text.Replace("| 230 V |", "| 230 A |")
                .Replace("| high | 12.6 V | [Common practice](../sources.md#common-practice) |",
                    "| high | series supply | series page |"),
        }).Append(new ContentFile("checks/second-supply.md", TinyContent.Texts["checks/board-supply.md"]
            .Replace("board-supply", "second-supply")
            .Replace("| high | 12.6 V | [Common practice](../sources.md#common-practice) |",
                "| high | series supply | series page |"))));
        Diagnostic[] found = [.. ContentCompiler.Compile(folder).Diagnostics.Where(found =>
            found.Name != "unreachable-page")];
        Assert.Equal(("wrong-input", "series/alder-one.md"), (Assert.Single(found).Name, found[0].At.Path));
    }
}
