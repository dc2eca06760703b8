using System.Text.Json.Nodes;
using DxAssistant.Server.Commands;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class JsonLinesTests
{
    [Fact]
    public async Task RunAsync_SeveralLines_AnswersInOrder()
    {
        var (code, output) = await EchoAsync("""{"n":1}""" + "\n\n" + """{"n":2}""" + "\n");

        Assert.Equal(0, code);
        Assert.Equal("{\"got\":1}\n{\"got\":2}\n", output);
    }

    [Theory]
    [InlineData("{")]
    [InlineData("[1]")]
    [InlineData("7")]
    [InlineData("not json")]
    [InlineData("""{"other":1}""")]
    [InlineData("""{"n":"word"}""")]
    [InlineData("\u0000")]
    public async Task RunAsync_MalformedLine_GetsAnErrorAndTheRestGoesOn(string line)
    {
        var (code, output) = await EchoAsync(line + "\n" + """{"n":2}""" + "\n");

        string[] lines = output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(1, code);
        Assert.Equal(2, lines.Length);
        Assert.StartsWith("{\"error\":", lines[0], StringComparison.Ordinal);
        Assert.Equal("{\"got\":2}", lines[1]);
    }

    [Fact]
    public async Task RunAsync_ErrorInALineWithAnId_NamesIt()
    {
        var (_, output) = await EchoAsync("""{"id":"a1","n":null}""");

        Assert.StartsWith("{\"id\":\"a1\",\"error\":", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_OneLineIn_OneLineOutBeforeTheNextIsRead()
    {
        using var output = new StringWriter { NewLine = "\n" };
        var input = new Scripted(output, "{\"n\":1}", "{\"n\":2}");

        await JsonLines.RunAsync(new Streams(input, output, TextWriter.Null), Echo, CancellationToken.None);

        Assert.Equal([0, 1, 2], input.LinesSeen);
    }

    private static async Task<(int Code, string Output)> EchoAsync(string text)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var input = new StringReader(text);
        int code = await JsonLines.RunAsync(new Streams(input, output, TextWriter.Null), Echo, CancellationToken.None);
        return (code, output.ToString());
    }

    private static JsonObject Echo(System.Text.Json.JsonElement request) => request.TryGetProperty("n", out var n)
        ? new JsonObject { ["got"] = n.GetInt32() }
        : throw new RequestException("the request has no \"n\"");

    /// <summary>Notes how many lines were written each time a line is asked for.</summary>
    private sealed class Scripted(StringWriter output, params string[] lines) : TextReader
    {
        private int next;

        public List<int> LinesSeen { get; } = [];

        public override ValueTask<string?> ReadLineAsync(CancellationToken cancellationToken)
        {
            LinesSeen.Add(output.ToString().Count(c => c == '\n'));
            return ValueTask.FromResult(next < lines.Length ? lines[next++] : null);
        }
    }
}
