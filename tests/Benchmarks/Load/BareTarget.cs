using System.Globalization;
using System.Net;
using DxAssistant.Bot.Tests.Load;

namespace DxAssistant.Benchmarks.Load;

/// <summary>The baseline: <see cref="BareAppender"/>, sent the events that the same turns leave.</summary>
internal sealed class BareTarget(ServerProcess server) : ILoadTarget
{
    private readonly CaseClient client = new(server.Address);

    public ServerProcess Server => server;

    public Task<string> OpenAsync() => Task.FromResult(Guid.NewGuid().ToString("N"));

    public async Task SendAsync(string caseId, long sequence, RecordedTurn turn)
    {
        string path = string.Create(CultureInfo.InvariantCulture, $"/append/{caseId}/{sequence}");
        if (await client.PostAsync(path, string.Join('\n', turn.Events)) is not HttpStatusCode.OK and var status)
            throw new InvalidOperationException($"{caseId} {turn.TurnId} was answered {status}");
    }

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await server.DisposeAsync();
    }
}
