using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>A contact, a fuse, a wire.</summary>
internal sealed class ContinuitySource : IReadingSource
{
    public string Calculation => "continuity";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double closed = setup.Given("closed"), open = setup.Given("open");
        return condition switch
        {
            VerdictKind.Closed => [TrueReading.Of(setup.Between(0.05, 0.6) * closed)],
            VerdictKind.OpenCircuit => [TrueReading.Open],

            // A dirty contact: on the way from one limit to the other, by decades.
            VerdictKind.High => [TrueReading.Of(closed * Math.Pow(open / closed, setup.Between(0.3, 0.7)))],
            _ => [],
        };
    }
}
