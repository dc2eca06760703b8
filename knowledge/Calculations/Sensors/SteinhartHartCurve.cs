using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Sensors;

/// <summary>The Steinhart–Hart law; a, b, c in 1/K, b above 0, c 0 or more.</summary>
internal sealed class SteinhartHartCurve(double a, double b, double c, Temperature coldest, Temperature hottest)
    : SensorCurve("1/T = A + B ln R + C (ln R)^3", coldest, hottest)
{
    private protected override double LogOhms(double kelvins) => Thermistor.SteinhartHartLogOhms(a, b, c, kelvins);

    private protected override double KelvinsAt(double logOhms) =>
        1 / Thermistor.SteinhartHartInverse(a, b, c, logOhms);
}
