using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Sensors;

/// <summary>The beta law; resistance at 25 °C in Ω, beta in K, both above 0.</summary>
internal sealed class BetaCurve(double ohmsAt25, double betaKelvins, Temperature coldest, Temperature hottest)
    : SensorCurve("R = R25 exp(B (1/T - 1/298.15 K))", coldest, hottest)
{
    private protected override double LogOhms(double kelvins) =>
        Math.Log(ohmsAt25) + betaKelvins * (1 / kelvins - 1 / Thermistor.RoomKelvins);

    private protected override double KelvinsAt(double logOhms) =>
        1 / (1 / Thermistor.RoomKelvins + (logOhms - Math.Log(ohmsAt25)) / betaKelvins);
}
