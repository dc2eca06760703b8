using System.Text.Json;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>Saturation against the 5 K tables of tests/Reference/refrigerants.json, both ways.</summary>
/// <remarks>
/// Sources of the tables: equations of state of Tillner-Roth &amp; Yokozeki 1997, Kamei et al. 1995,
/// Lemmon et al. 2009, Lemmon 2003 (R-410A), Akasaka 2013 mixture model (R-454B), evaluated with CoolProp
/// 6.8.0.
/// </remarks>
public sealed class RefrigerantTableTests
{
    private const double Share = 0.0005;

    public static TheoryData<string, string, double, double> Rows()
    {
        var data = new TheoryData<string, string, double, double>();
        using var document = JsonDocument.Parse(ReferenceFiles.Read("refrigerants.json"));
        foreach (var fluid in document.RootElement.GetProperty("fluids").EnumerateObject())
            foreach (var row in fluid.Value.GetProperty("table_5K").EnumerateArray())
                foreach (var (field, curve) in new[] { ("p_kPa", "dew"), ("p_bubble_kPa", "bubble"),
                    ("p_dew_kPa", "dew") })
                    if (row.TryGetProperty(field, out var pressure))
                        data.Add(fluid.Name, curve, row.GetProperty("t").GetDouble(), pressure.GetDouble());
        return data;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void TryPressure_TableRow_AgreesWithinHalfAPerMille(
        string name, string curve, double celsius, double kilopascals)
    {
        Assert.True(Refrigerant.Find(name)!.Curve(curve)!.TryPressure(
            Temperature.FromCelsius(celsius), out var pressure));
        Assert.Equal(kilopascals, pressure.Pascals / 1000, kilopascals * Share);
    }

    // The same half per mille of pressure, taken to temperature by the slope of the curve.
    [Theory]
    [MemberData(nameof(Rows))]
    public void TryTemperature_TableRow_AgreesWithinHalfAPerMille(
        string name, string curve, double celsius, double kilopascals)
    {
        var saturation = Refrigerant.Find(name)!.Curve(curve)!;
        Assert.True(saturation.TryTemperature(AbsolutePressure.FromPascals(kilopascals * 1000), out var temperature));
        var slack = Share * kilopascals * 1000 * saturation.SlopeAt(temperature);
        Assert.Equal(celsius, temperature.Celsius, slack);
    }

    [Theory]
    [InlineData("R-32")]
    [InlineData("R-410A")]
    [InlineData("R-22")]
    [InlineData("R-290")]
    [InlineData("R-454B")]
    public void TryTemperature_OfPressure_GivesTheTemperatureBackAndRises(string name)
    {
        foreach (var curve in new[] { Refrigerant.Find(name)!.Bubble!, Refrigerant.Find(name)!.Dew! })
        {
            var last = 0.0;
            for (var kelvins = Math.Max(curve.Coldest.Kelvins, 220); kelvins <= curve.Hottest.Kelvins; kelvins += 0.37)
            {
                Assert.True(curve.TryPressure(Temperature.FromKelvins(kelvins), out var pressure));
                Assert.True(pressure.Pascals > last);
                Assert.True(curve.TryTemperature(pressure, out var back));
                Assert.Equal(kelvins, back.Kelvins, 1e-6);
                last = pressure.Pascals;
            }
        }
    }

    [Theory]
    [InlineData("R410A")]
    [InlineData("r-410a")]
    [InlineData("R 410A")]
    [InlineData("410A")]
    public void Find_UsualSpellings_FindIt(string written) => Assert.Equal("R-410A", Refrigerant.Find(written)?.Name);

    [Theory]
    [InlineData("R-134a")]
    [InlineData("")]
    [InlineData(null)]
    public void Find_NotHeld_IsNull(string? written) => Assert.Null(Refrigerant.Find(written));

    [Theory]
    [InlineData("R410A", 100)]
    [InlineData("R454B", 55)]
    [InlineData("R454B", -60)]
    public void TryPressure_OutsideTheCurve_IsRefused(string name, double celsius) =>
        Assert.False(Refrigerant.Find(name)!.Dew!.TryPressure(Temperature.FromCelsius(celsius), out _));
}
