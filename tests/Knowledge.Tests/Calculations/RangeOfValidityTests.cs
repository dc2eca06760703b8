using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>
/// Functions of physics answer within the range that their documentation names, its ends included, and nowhere else.
/// </summary>
public sealed class RangeOfValidityTests
{
    // Definition: the documented range, -20 to 85 °C.
    [Theory]
    [InlineData(-20, true)]
    [InlineData(85, true)]
    [InlineData(-21, false)]
    [InlineData(86, false)]
    public void CautiousFactor_Temperature_IsWithinItsRange(double celsius, bool covered) =>
        AssertCovered(covered, () => Insulation.CautiousFactor(Temperature.FromCelsius(celsius)));

    // Source: IEEE 43: both rules refer to 40 °C and are 1 there. Below it resistance is corrected down, above it up.
    [Theory]
    [InlineData(20, 0.25)]
    [InlineData(30, 0.5)]
    [InlineData(40, 1)]
    public void CautiousFactor_UpTo40Degrees_Halves(double celsius, double factor) =>
        Assert.Equal(factor, Insulation.CautiousFactor(Temperature.FromCelsius(celsius)).Factor, 1e-9);

    // Source: IEEE 43-2013, thermosetting (from memory): exp(-4230 (1/333 - 1/313)) at 60 °C, by hand 2.252; halving
    // would say 4.
    [Fact]
    public void CautiousFactor_Above40Degrees_IsTheSmallerCorrection() =>
        Assert.Equal(2.252, Insulation.CautiousFactor(Temperature.FromCelsius(60)).Factor, 0.001);

    // Definition: the documented range, up to 20 MPa and 200 to 500 K.
    [Theory]
    [InlineData(20, 200, 500, true)]
    [InlineData(20, 500, 200, true)]
    [InlineData(20.1, 300, 300, false)]
    [InlineData(1, 199, 300, false)]
    [InlineData(1, 501, 300, false)]
    [InlineData(1, 300, 199, false)]
    [InlineData(1, 300, 501, false)]
    public void NitrogenReal_State_IsWithinItsRange(double megapascals, double kelvinsBefore, double kelvinsAfter,
        bool covered) =>
        AssertCovered(covered,
            () => Nitrogen.Real(AbsolutePressure.FromPascals(megapascals * 1e6), Temperature.FromKelvins(kelvinsBefore),
            Temperature.FromKelvins(kelvinsAfter)));

    // Source: compressibility of nitrogen, Perry's Chemical Engineers' Handbook (from memory): at 200 K 0.9212, 0.8882
    // and 0.8455 at 40, 60 and 100 bar, at 300 K 1.0052, 1.0559 and 1.1422 at 100, 200 and 300 bar. The pressure of the
    // same density at the other temperature is read between these by hand: 59.0 bar for 3989 mol/m³, 185.2 bar for 7113
    // mol/m³. An ideal gas would say 66.7 and 150 bar.
    [Theory]
    [InlineData(10, 300, 200, 5.90)]
    [InlineData(10, 200, 300, 18.52)]
    public void NitrogenReal_HighPressure_IsThatOfTheTable(double before, double kelvinsBefore, double kelvinsAfter,
        double after) =>
        Assert.Equal(after,
            Nitrogen.Real(AbsolutePressure.FromPascals(before * 1e6), Temperature.FromKelvins(kelvinsBefore),
            Temperature.FromKelvins(kelvinsAfter)).Pascals / 1e6, after * 0.006);

    private static void AssertCovered(bool covered, Action call)
    {
        Exception? thrown = Record.Exception(call);
        if (covered) Assert.Null(thrown);
        else Assert.IsType<ArgumentOutOfRangeException>(thrown);
    }
}
