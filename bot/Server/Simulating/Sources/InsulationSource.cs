using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>Insulation to ground; a leak takes one reading down by decades.</summary>
internal sealed class InsulationSource : IReadingSource
{
    public string Calculation => "insulation";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        if (condition is not (VerdictKind.Within or VerdictKind.Low)) return [];
        double minimum = setup.Given("minimum");
        double[] ohms = [.. setup.Check.Readings.Select(_ => minimum * Math.Pow(10, setup.Between(0.5, 2)))];
        if (condition == VerdictKind.Low)
            ohms[(int)(setup.Draws.NextShare() * ohms.Length)] = minimum * Math.Pow(10, -setup.Between(0.5, 3));
        return [.. ohms.Select(TrueReading.Of)];
    }
}
