using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>Current and voltage of a run capacitor: I = 2 π f C V.</summary>
internal sealed class CapacitorSource : IReadingSource
{
    public string Calculation => "capacitor";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double rated = setup.Given("rated"), tolerance = setup.Given("tolerance");
        double? farads = condition switch
        {
            VerdictKind.Within => setup.Inside(rated * (1 - tolerance), rated * (1 + tolerance)),
            VerdictKind.Low => rated * setup.Between(0.3, 1 - 2 * tolerance),
            VerdictKind.High => rated * setup.Between(1 + 2 * tolerance, 1.8),
            _ => null,
        };
        if (farads is not { } capacitance) return [];
        double volts = setup.Between(300, 420);
        double amperes = 2 * Math.PI * setup.Given("frequency") * capacitance * volts;
        return [TrueReading.Of(amperes), TrueReading.Of(volts)];
    }
}
