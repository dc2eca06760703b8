using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Load;

namespace DxAssistant.Bot.Tests.Server.Operations;

/// <summary>What a collector is sent by the program itself, as the runbook says.</summary>
public sealed class CollectorTests
{
    private const string Secret = "my-secret-words";

    // Before the length of a span's name: field 5 of a span, a text; from memory, as the protocol's own definition has
    // it.
    private const char SpanName = (char)0x2A;

    // The program sends what is left when it is told to end, so that nothing is waited for.
    [Fact]
    public async Task Run_CollectorNamed_SendsWhatTheRunbookNamesAndNothingThatWasSaid()
    {
        using var folder = new TemporaryFolder();
        using var collector = new ListeningCollector();
        string id;
        await using (var server = await ServerProcess.StartByAsync(
            ["env", $"OTEL_EXPORTER_OTLP_ENDPOINT={collector.Address}", "OTEL_EXPORTER_OTLP_PROTOCOL=http/protobuf"],
            "--data", folder.File("cases.db")))
        {
            using var client = new CaseClient(server.Address);
            using var plain = new HttpClient { BaseAddress = server.Address };
            id = await client.OpenAsync();
            for (int i = 0; i < 2; i++)
                await client.PostAsync($"/api/cases/{id}/turns", $$"""{"turnId":"t1","text":"{{Secret}}"}""");
            using var _ = await plain.GetAsync($"/api/cases/{Secret}?words={Secret}");
            Assert.Equal(0, await server.EndAsync());
        }

        string runbook = await File.ReadAllTextAsync(Repository.PathOf("bot", "Server", "Operations", "RUNBOOK.md"));
        Assert.All(["turn", "read", "work-out", "save"], name =>
        {
            Named(name, collector.Traces, runbook);
            Assert.Contains($"{SpanName}{(char)name.Length}{name}", collector.Traces, StringComparison.Ordinal);
        });
        Assert.All(["dxassistant.turn.stage.duration", "dxassistant.turns", "Saved", "Repeated"],
            name => Named(name, collector.Figures, runbook));
        Assert.Contains("/api/cases/{id}/turns", collector.Traces, StringComparison.Ordinal);
        Assert.All([collector.Traces, collector.Figures],
            sent => Assert.DoesNotContain(Secret, sent, StringComparison.Ordinal));
        Assert.DoesNotContain(id, collector.Traces, StringComparison.Ordinal);
    }

    private static void Named(string name, string sent, string runbook)
    {
        Assert.Contains(name, sent, StringComparison.Ordinal);
        Assert.Contains($"`{name}`", runbook, StringComparison.Ordinal);
    }
}
