using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>A sensor on its curve, off it, broken or shorted.</summary>
internal sealed class ThermistorSource : IReadingSource
{
    public string Calculation => "thermistor-curve";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double celsius = setup.Surroundings.Indoor;
        TrueReading? resistance = condition switch
        {
            VerdictKind.Within => At(setup, celsius + setup.Inside(-1, 1) * Math.Abs(setup.Given("tolerance"))),
            VerdictKind.Low => At(setup, celsius, setup.Between(0.25, 0.75)),
            VerdictKind.High => At(setup, celsius, setup.Between(1.35, 4)),
            VerdictKind.OpenCircuit => TrueReading.Open,
            VerdictKind.ShortCircuit => TrueReading.Of(setup.Between(0, 8)),
            _ => null,
        };
        return resistance is { } reading ? [reading, TrueReading.Of(celsius)] : [];
    }

    private static TrueReading At(ReadingSetup setup, double celsius, double factor = 1)
    {
        setup.Curve.TryResistance(Temperature.FromCelsius(celsius), out Resistance resistance);
        return TrueReading.Of(factor * resistance.Ohms);
    }
}
