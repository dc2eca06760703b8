using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using DxAssistant.Bot.Tests.Cases.Claims;
using DxAssistant.Server.Desk;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;

namespace DxAssistant.Bot.Tests.Server.Desk;

/// <summary>News of claims reaches a receiver on this machine, signed, and is not lost while it is away.</summary>
public sealed class NewsTellerTests
{
    private const string Secret = "sixteen letters and more";

    [Fact]
    public async Task Tell_ReceiverAwayThenBack_GetsAllNewsOnceAndSigned()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();
        var got = new List<(string Time, string Signature, string Body)>();
        bool away = true;
        await using var receiver = await ReceiverAsync(got, () => away);
        using var http = new HttpClient();
        var teller =
            new NewsTeller(made.Claims, new NewsSettings(new Uri(receiver.Urls.First()), Secret), http, made.Clock);

        Assert.Equal(0, await teller.TellAsync(default));
        away = false;
        Assert.Equal(0, await teller.TellAsync(default)); // not due yet: it waits
        made.Clock.Time += NewsTeller.Wait(0);
        Assert.Equal(2, await teller.TellAsync(default));
        Assert.Equal(0, await teller.TellAsync(default));

        Assert.Equal(["draft", "ready"],
            got.Select(news => JsonDocument.Parse(news.Body).RootElement.GetProperty("state").GetString()));
        Assert.All(got, news => Assert.Equal(
            Convert.ToHexStringLower(HMACSHA256.HashData(Encoding.UTF8.GetBytes(Secret),
                Encoding.UTF8.GetBytes($"{news.Time}.{news.Body}"))),
            news.Signature));
        Assert.Equal(claim.Id, JsonDocument.Parse(got[0].Body).RootElement.GetProperty("claim").GetString());
    }

    [Fact]
    public void Wait_TriedOftenInVain_GrowsToAnHour()
    {
        Assert.Equal([2, 4, 8, 16, 32], Enumerable.Range(0, 5)
            .Select(tries => (int)NewsTeller.Wait(tries).TotalSeconds));
        Assert.All([11, 50, 1000], tries => Assert.Equal(TimeSpan.FromHours(1), NewsTeller.Wait(tries)));
    }

    // Source: RFC 4231, test case 2 (key "Jefe"), the reference value of HMAC-SHA256; the signature is built from it.
    [Fact]
    public void Hmac_PublishedCase_Matches() => Assert.Equal(
        "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843",
        Convert.ToHexStringLower(HMACSHA256.HashData("Jefe"u8, "what do ya want for nothing?"u8)));

    private static async Task<WebApplication> ReceiverAsync(List<(string, string, string)> got, Func<bool> away)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        var app = builder.Build();
        app.MapPost("/", async (HttpContext http) =>
        {
            if (away()) return Results.StatusCode(503);
            using var reader = new StreamReader(http.Request.Body);
            got.Add((http.Request.Headers[NewsSignature.TimeHeader]!, http.Request.Headers[NewsSignature.Header]!,
                await reader.ReadToEndAsync()));
            return Results.Ok();
        });
        await app.StartAsync();
        return app;
    }
}
