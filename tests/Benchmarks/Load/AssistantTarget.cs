using System.Net;
using DxAssistant.Bot.Tests.Load;

namespace DxAssistant.Benchmarks.Load;

/// <summary>The program itself.</summary>
internal sealed class AssistantTarget(ServerProcess server) : ILoadTarget
{
    private readonly CaseClient client = new(server.Address);

    public ServerProcess Server => server;

    public Task<string> OpenAsync() => client.OpenAsync();

    public async Task SendAsync(string caseId, long sequence, RecordedTurn turn)
    {
        if (await client.SendAsync(caseId, turn) is not HttpStatusCode.OK and var status)
            throw new InvalidOperationException($"{caseId} {turn.TurnId} was answered {status}");
    }

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await server.DisposeAsync();
    }
}
