using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>A signal line that swings, or stands still.</summary>
internal sealed class SignalSwingSource : IReadingSource
{
    public string Calculation => "signal-swing";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double least = setup.Given("swing");
        double? swing = condition switch
        {
            VerdictKind.Within => least * setup.Between(1.3, 2),
            VerdictKind.Low => least * setup.Between(0, 0.5),
            _ => null,
        };
        double lowest = setup.Between(0, 0.5) * least;
        return swing is { } volts ? [TrueReading.Of(lowest), TrueReading.Of(lowest + volts)] : [];
    }
}
