using System.Collections.Concurrent;
using System.Diagnostics;
using System.Diagnostics.Metrics;
using DxAssistant.Cases;

namespace DxAssistant.Bot.Tests.Server.Operations;

/// <summary>What a running program tells of its work, and what it keeps to itself.</summary>
public sealed class SignalsTests
{
    private const string Secret = "my secret words";

    [Fact]
    public async Task Turn_Listened_TellsItsStagesAndNothingThatWasSaid()
    {
        var stages = new ConcurrentBag<string>();
        var told = new ConcurrentBag<string>();
        using var listener = new ActivityListener
        {
            ShouldListenTo = source => source.Name == Signals.Name,
            Sample = (ref ActivityCreationOptions<ActivityContext> _) => ActivitySamplingResult.AllDataAndRecorded,
            ActivityStopped = activity =>
            {
                stages.Add(activity.OperationName);
                foreach (var tag in activity.TagObjects) told.Add($"{tag.Key}={tag.Value}");
            },
        };
        ActivitySource.AddActivityListener(listener);

        await TakeTurnAsync();

        Assert.Superset(new HashSet<string> { "turn", "read", "work-out", "save" }, stages.ToHashSet());
        Assert.DoesNotContain(told, tag => tag.Contains(Secret, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Turn_Counted_SaysHowItEnded()
    {
        var ends = new ConcurrentBag<string>();
        using var listener = new MeterListener
        {
            InstrumentPublished = (instrument, l) =>
            {
                if (instrument.Name == "dxassistant.turns") l.EnableMeasurementEvents(instrument);
            },
        };
        listener.SetMeasurementEventCallback<long>((_, _, tags, _) => ends.Add(tags[0].Value!.ToString()!));
        listener.Start();

        await TakeTurnAsync();

        Assert.Contains("Saved", ends);
        Assert.Contains("Repeated", ends);
    }

    // The same turn twice, as a client does that lost the answer.
    private static async Task TakeTurnAsync()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        for (int i = 0; i < 2; i++)
            await server.PostAsync($"/api/cases/{id}/turns", $$"""{"turnId":"t1","text":"{{Secret}}"}""");
    }
}
