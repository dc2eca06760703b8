using System.Net;
using System.Text;
using System.Text.Json;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>Whatever goes wrong at an address of the API is told in one form.</summary>
/// <remarks>Source: RFC 9457, problem details: media type application/problem+json; the status stands in the body too;
/// without a type it is about:blank, and the title is then the name of the status.</remarks>
public sealed class ProblemDetailsTests
{
    [Theory]
    [InlineData("GET", "/api/unheard-of", 404, "Not Found")]
    [InlineData("GET", "/api/cases/none", 404, "Not Found")]
    [InlineData("PATCH", "/api/cases", 405, "Method Not Allowed")]
    [InlineData("POST", "/api/cases/none/photos?turnId=t&unit=one", 400, "Bad Request")]
    [InlineData("POST", "/api/messages", 400, "Bad Request")]
    [InlineData("GET", "/api/claims/verify?line=nonsense", 400, "Bad Request")]
    [InlineData("GET", "/api/claims/verify", 400, "Bad Request")]
    [InlineData("GET", "/api/claims/none", 404, "Not Found")]
    [InlineData("GET", "/api/pages", 404, "Not Found")]
    [InlineData("PATCH", "/api/accounts/nobody", 400, "Bad Request")]
    public async Task Anything_Wrong_IsAProblemWithItsStatusAndALine(string method, string path, int status,
        string title)
    {
        await using var server = await RunningServer.StartAsync();
        using var request = new HttpRequestMessage(new HttpMethod(method), path);
        if (method != "GET") request.Content = new StringContent("[", Encoding.UTF8, "application/json");

        using var answer = await server.Http.SendAsync(request);

        Assert.Equal((HttpStatusCode)status, answer.StatusCode);
        await IsProblemAsync(answer, status, title);
    }

    [Fact]
    public async Task Page_ThatIsNotThere_IsALineOfText()
    {
        await using var server = await RunningServer.StartAsync();

        using var answer = await server.Http.GetAsync("/unheard-of");

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Equal("There is nothing at this address.", await answer.Content.ReadAsStringAsync());
    }

    private static async Task IsProblemAsync(HttpResponseMessage answer, int status, string title)
    {
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        var problem = JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement;
        Assert.Equal(status, problem.GetProperty("status").GetInt32());
        Assert.Equal(title, problem.GetProperty("title").GetString());
        Assert.NotEmpty(problem.GetProperty("detail").GetString()!);
    }
}
