using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>Supply limits of a nominal voltage that the table does not hold.</summary>
public sealed class SupplyByRatioTests
{
    // Source: ANSI C84.1, table 1, row of 120 V (from memory): service 114 to 126 and 110 to 127, utilization 110 to
    // 126 and 106 to 127, of range A and B. At 200 V the same shares, by hand, to whole volts.
    [Theory]
    [InlineData(false, false, 190, 210)]
    [InlineData(true, false, 183, 212)]
    [InlineData(false, true, 183, 210)]
    [InlineData(true, true, 177, 212)]
    public void Ansi_VoltageNotInTheTable_HasTheSharesOfTheTable(bool rangeB, bool utilization, double least,
        double most) =>
        Assert.Equal((least, most), SupplyLimits.Ansi(Voltage.FromVolts(200), rangeB, utilization));
}
