using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Sensors;

/// <summary>One line of a sensor's table.</summary>
/// <param name="Celsius">°C.</param>
/// <param name="Ohms">Ω.</param>
public readonly record struct SensorPoint(double Celsius, double Ohms)
{
    internal double InverseKelvins => 1 / Temperature.FromCelsius(Celsius).Kelvins;
}
