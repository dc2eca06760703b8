using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using DxAssistant.Bot.Tests.Cases.Photos;
using DxAssistant.Bot.Tests.Server.Accounts;
using DxAssistant.Cases.Photos;

namespace DxAssistant.Bot.Tests.Server.Jobs;

/// <summary>Photos over HTTP: what is taken, how it is served, and whose it is.</summary>
public sealed class PhotoEndpointsTests
{
    [Fact]
    public async Task Post_Picture_IsServedByItsOwnSortAndCannotRun()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        using var sent = await SendAsync(server.Http, id, SmallPictures.Png, "text/html");
        Assert.Equal(HttpStatusCode.Created, sent.StatusCode);
        string hash = JsonDocument.Parse(await sent.Content.ReadAsStringAsync()).RootElement[0].GetProperty("hash")
            .GetString()!;

        using var shown = await server.Http.GetAsync($"/api/cases/{id}/photos/{hash}");

        Assert.Equal(SmallPictures.Png, await shown.Content.ReadAsByteArrayAsync());
        Assert.Equal("image/png", shown.Content.Headers.ContentType!.MediaType);
        Assert.Equal("nosniff", Assert.Single(shown.Headers.GetValues("X-Content-Type-Options")));
        Assert.Contains("sandbox", Assert.Single(shown.Headers.GetValues("Content-Security-Policy")),
            StringComparison.Ordinal);
        Assert.Equal("attachment", shown.Content.Headers.ContentDisposition!.DispositionType);
    }

    [Fact]
    public async Task Post_WhatIsNoPhoto_IsRefusedAndNothingIsKept()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        byte[] page = Encoding.UTF8.GetBytes("<html><script>alert(1)</script>");
        using var html = await SendAsync(server.Http, id, page, "image/png");
        using var large = await SendAsync(server.Http, id, new byte[Photo.Largest + 1], "image/png");
        using var king = await SendAsync(server.Http, id, SmallPictures.Png, "image/png", "king");
        using var elsewhere = await SendAsync(server.Http, "nobody", SmallPictures.Png, "image/png");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, html.StatusCode);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, large.StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, king.StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, elsewhere.StatusCode);
        Assert.Equal(0, (await server.GetAsync($"/api/cases/{id}/job")).Json.GetProperty("job").GetProperty("photos")
            .GetArrayLength());
        Assert.Null(await server.Store.PhotoAsync(id, Photo.HashOf(SmallPictures.Png)));
    }

    [Fact]
    public async Task Photo_Dropped_IsGoneAndItsEntryStays()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        using var sent = await SendAsync(server.Http, id, SmallPictures.Webp, "image/webp");
        string hash = Photo.HashOf(SmallPictures.Webp);
        await server.PostAsync($"/api/cases/{id}/job", $$"""{"turnId":"d","dropPhoto":"{{hash}}"}""");

        Assert.Equal(HttpStatusCode.NotFound, (await server.GetAsync($"/api/cases/{id}/photos/{hash}")).Status);
        Assert.Null(await server.Store.PhotoAsync(id, hash));
        Assert.Contains((await server.Store.ReadRowsAsync(id)).Rows,
            row => row.Body.Contains(hash, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Photo_OfAnotherTechnician_IsAsIfItWereNotThere()
    {
        await using var company = await Company.StartAsync();
        var tom = await company.BrowserOfAsync("tom");
        string id = await Company.OpenCaseAsync(tom);
        using var sent = await SendAsync(tom, id, SmallPictures.Jpeg, "image/jpeg");
        string path = $"/api/cases/{id}/photos/{Photo.HashOf(SmallPictures.Jpeg)}";
        var tilda = await company.BrowserOfAsync("tilda");
        string hers = await Company.OpenCaseAsync(tilda);
        using var byTilda = await SendAsync(tilda, id, SmallPictures.Png, "image/png");

        Assert.Equal(HttpStatusCode.OK, await Company.StatusAsync(tom, path));
        Assert.Equal(HttpStatusCode.NotFound, await Company.StatusAsync(tilda, path));
        Assert.Equal(HttpStatusCode.NotFound,
            await Company.StatusAsync(tilda, path.Replace(id, hers, StringComparison.Ordinal)));
        Assert.Equal(HttpStatusCode.NotFound, byTilda.StatusCode);
        Assert.Equal(HttpStatusCode.OK, await Company.StatusAsync(await company.BrowserOfAsync("dora"), path));
        Assert.Equal(HttpStatusCode.Unauthorized, await Company.StatusAsync(company.Browser(), path));
    }

    private static Task<HttpResponseMessage> SendAsync(HttpClient http, string id, byte[] bytes, string type,
        string shows = "nameplate")
    {
        var content = new ByteArrayContent(bytes);
        content.Headers.ContentType = new MediaTypeHeaderValue(type);
        return http.PostAsync($"/api/cases/{id}/photos?turnId=p{bytes.Length}{shows}&shows={shows}&unit=1", content);
    }
}
