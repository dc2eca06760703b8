using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Server.Simulating;

/// <summary>
/// What a meter of the class that a check names shows of a true value, in the words a technician fills in.
/// </summary>
/// <remarks>Source: GUM, JCGM 100:2008, 4.3.7: within its limit of error every error is as likely.</remarks>
internal static class SimulatedMeter
{
    private const int DigitsShown = 4;

    public static string Show(TrueReading reading, ReadingField field, ReadingSetup setup, Draws draws)
    {
        if (reading.Mark is { } mark) return mark;
        double error = LimitOfError(field.Unit.Kind, reading.Si, setup) * (2 * draws.NextShare() - 1);
        double shown = Math.Clamp(reading.Si + error, field.Lowest, field.Highest);
        return $"{NumberText.Of(field.Unit.FromSi(shown), DigitsShown)} {field.Unit.Symbol}";
    }

    private static double LimitOfError(QuantityKind kind, double si, ReadingSetup setup) => kind switch
    {
        QuantityKind.Temperature when setup.Si("thermometer") is { } kelvins => kelvins,
        QuantityKind.GaugePressure or QuantityKind.Pressure when setup.Si("gauge") is { } pascals => pascals,
        _ => setup.Inputs.TryGetValue("meter", out JudgeInput? input)
            && input is JudgeInput.Meter { Value: MeterClass meter }
            ? meter.At(kind, si).LimitOfError(si)
            : 0,
    };
}
