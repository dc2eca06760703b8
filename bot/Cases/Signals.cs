using System.Diagnostics;
using System.Diagnostics.Metrics;

namespace DxAssistant.Cases;

/// <summary>
/// What a running program tells of its work: one trace a turn with a span a stage, and figures of turns.
/// </summary>
/// <remarks>Nothing of what people said goes in, no case id either: only stages, counts and times.</remarks>
public static class Signals
{
    /// <summary>The name under which a collector finds the traces and the figures.</summary>
    public const string Name = "DxAssistant";

    private static readonly ActivitySource Source = new(Name);
    private static readonly Meter Meter = new(Name);

    private static readonly Histogram<double> Stages = Meter.CreateHistogram<double>(
        "dxassistant.turn.stage.duration", "s", "Time of one stage of a turn");

    private static readonly Counter<long> Turns = Meter.CreateCounter<long>(
        "dxassistant.turns", "{turn}", "Turns answered, by how they ended");

    /// <summary>Begins a stage; it ends when what is returned is disposed.</summary>
    public static StageSpan Stage(string name) => new(name, Source.StartActivity(name), Stages);

    /// <summary>Counts a turn that ended.</summary>
    public static void Ended(TurnEnd end) => Turns.Add(1, new KeyValuePair<string, object?>("end", end.ToString()));
}
