using System.Net;
using DxAssistant.Server.Operations;

namespace DxAssistant.Bot.Tests.Server.Operations;

/// <summary>A loop that ran away is held, a person is not.</summary>
public sealed class PaceTests
{
    [Fact]
    public async Task Get_FarMoreThanThePace_IsHeldAndToldWhen()
    {
        await using var server = await RunningServer.StartAtPaceAsync(1);

        var answers = await GetManyAsync(server, 20);

        Assert.Contains(answers, answer => answer.StatusCode == HttpStatusCode.OK);
        var held = answers.First(answer => answer.StatusCode == HttpStatusCode.TooManyRequests);
        Assert.Equal("1", Assert.Single(held.Headers.GetValues("Retry-After")));
        Assert.Contains("Nothing was changed", await held.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Get_NoLimit_NeverHolds()
    {
        await using var server = await RunningServer.StartAtPaceAsync(0);

        Assert.All(await GetManyAsync(server, 600), answer => Assert.Equal(HttpStatusCode.OK, answer.StatusCode));
    }

    private static async Task<HttpResponseMessage[]> GetManyAsync(RunningServer server, int times) =>
        await Task.WhenAll(Enumerable.Range(0, times).Select(_ => server.Http.GetAsync(Health.Running)));
}
