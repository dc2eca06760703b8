using System.Net;
using System.Text.Json;
using DxAssistant.Cases;
using DxAssistant.Cases.Brought;
using DxAssistant.Conversation.Messages;
using DxAssistant.Server.Chat;

namespace DxAssistant.Bot.Tests.Server.Offline;

public sealed class BroughtEndpointsTests
{
    [Fact]
    public async Task Brought_CaseBegunAway_IsShownLikeAnyOther()
    {
        await using var server = await RunningServer.StartAsync(Shipped.InUse.Responder);
        string brought = Json(0, Opening(Shipped.InUse.Responder));

        var (status, taken) = await server.PostAsync("/api/cases/begun-away/brought", brought);

        // The server of this test answers on content "test", so what names another content is not known to it.
        Assert.Equal(HttpStatusCode.Gone, status);
        Assert.Contains("Nothing was changed", taken.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Empty(await server.Store.ReadAsync("begun-away"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("""{"basis":-1,"turns":[]}""")]
    [InlineData("""{"basis":0,"turns":[null]}""")]
    [InlineData("""{"basis":0,"turns":[{"turnId":"a","events":[null]}]}""")]
    [InlineData("""{"basis":0,"turns":[{"turnId":"a","events":[{"event":"nonsense"}]}]}""")]
    public async Task Brought_NoTurns_IsRefusedInOneLine(string body)
    {
        await using var server = await RunningServer.StartAsync();

        var (status, json) = await server.PostAsync("/api/cases/any/brought", body);

        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.DoesNotContain('\n', json.GetProperty("detail").GetString()!);
    }

    [Fact]
    public async Task Log_OfACase_HoldsItsTurns()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();

        var (status, log) = await server.GetAsync($"/api/cases/{id}/log");

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal("opening", log.GetProperty("turns")[0].GetProperty("turnId").GetString());
        Assert.Equal((await server.Store.ReadAsync(id)).Length, log.GetProperty("last").GetInt64());
    }

    private static BroughtTurn Opening(IResponder core) => new(
        CaseDesk.OpeningTurn, core.Respond([], new Message(CaseDesk.OpeningTurn, new MessageBody.Opening())).Events);

    private static string Json(long basis, params BroughtTurn[] turns) =>
        JsonSerializer.Serialize(new { basis, turns }, ChatJson.Options);
}
