using System.Diagnostics;
using System.Diagnostics.Metrics;

namespace DxAssistant.Cases;

/// <summary>One stage of a turn while it lasts.</summary>
public readonly struct StageSpan : IDisposable
{
    private readonly string name;
    private readonly Activity? activity;
    private readonly Histogram<double> stages;
    private readonly long begun;

    internal StageSpan(string name, Activity? activity, Histogram<double> stages)
    {
        this.name = name;
        this.activity = activity;
        this.stages = stages;
        begun = Stopwatch.GetTimestamp();
    }

    /// <summary>Ends the stage.</summary>
    public void Dispose()
    {
        stages?.Record(
            Stopwatch.GetElapsedTime(begun).TotalSeconds, new KeyValuePair<string, object?>("stage", name));
        activity?.Dispose();
    }
}
