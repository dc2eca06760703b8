using System.Globalization;
using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>Compares an answer with the value of a case file, within the file's tolerance.</summary>
internal static class CaseAssert
{
    public static void Equal(CaseValue expected, CalculationValue actual)
    {
        switch (actual)
        {
            case CalculationValue.Number number:
                Assert.Equal(expected.Unit, number.Quantity.Unit.Code);
                Near(expected.Value.GetDouble(), number.Quantity.Value, expected.Tolerance);
                break;
            case CalculationValue.Numbers numbers:
                Assert.Equal(expected.Unit, numbers.Unit.Code);
                Assert.Equal(expected.Value.GetArrayLength(), numbers.Values.Length);
                foreach (var (wanted, value) in expected.Value.EnumerateArray().Zip(numbers.Values))
                    Near(wanted.GetDouble(), value, expected.Tolerance);
                break;
            default:
                Assert.Equal(expected.AsInput().ToString(), actual.ToString());
                Assert.Equal(expected.AsInput().GetType(), actual.GetType());
                break;
        }
    }

    private static void Near(double expected, double actual, double tolerance) => Assert.True(
        Math.Abs(expected - actual) <= tolerance, string.Create(
            CultureInfo.InvariantCulture, $"expected {expected:R} ± {tolerance:R}, got {actual:R}"));
}
