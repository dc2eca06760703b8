using System.Text.Json;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Cases;
using DxAssistant.Server.Channels;
using DxAssistant.Server.Commands;

namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>Over the shipped pages.</summary>
public sealed class TalkCommandTests
{
    [Fact]
    public async Task TalkJson_OneLineIn_OneReplyOut()
    {
        var run = await Run.OfAsync("""
            {"open":true}
            {"text":"compressor won't start"}
            {"answer":{"choice":"brenholt-ws"}}
            {"answer":{"choice":"technician"}}
            {"answer":{"command":"why"}}
            """, "talk", "--json", "--content", Shipped.Folder);

        Assert.Equal(0, run.Code);
        Assert.Equal(["complaint", "series", "role"], run.Json.Take(3).Select(Kind));
        Assert.Equal(5, run.Json.Length);
        Assert.All(run.Json, reply => Assert.Equal(CautionsOf(reply), reply.GetProperty("cautions").GetArrayLength()));
        Assert.NotEmpty(run.Json[3].GetProperty("belief").EnumerateArray());
        Assert.Contains(
            "why", run.Json[4].GetProperty("segments").EnumerateArray().Select(s => s.GetProperty("kind").GetString()));
    }

    [Fact]
    public async Task TalkJson_CodeOfASeries_ComesWithItsPicture()
    {
        var run = await Run.OfAsync("""
            {"text":"b4"}
            {"answer":{"choice":"brenholt-ws"}}
            """, "talk", "--json", "--content", Shipped.Folder);

        var picture = run.Json[1].GetProperty("segments").EnumerateArray()
            .Where(segment => segment.TryGetProperty("pictures", out _))
            .SelectMany(segment => segment.GetProperty("pictures").EnumerateArray()).Single();
        Assert.Equal("display", picture.GetProperty("kind").GetString());
        Assert.Equal("Display b4, steady", picture.GetProperty("text").GetString());
        Assert.StartsWith("<svg ", picture.GetProperty("svg").GetString(), StringComparison.Ordinal);
        Assert.Equal("phrase", picture.GetProperty("from")[0].GetProperty("origin").GetString());
    }

    [Fact]
    public async Task TalkJson_SameLinesTwice_SameBytes()
    {
        const string lines = """
            {"text":"compressor won't start"}
            {"answer":{"choice":"brenholt-ws"}}
            {"answer":{"choice":"technician"}}
            """;

        var first = await Run.OfAsync(lines, "talk", "--json", "--content", Shipped.Folder);
        var second = await Run.OfAsync(lines, "talk", "--json", "--content", Shipped.Folder);

        Assert.Equal(WithoutCase(first), WithoutCase(second));
    }

    [Fact]
    public async Task TalkJson_BadLine_IsAnErrorAndTheCaseGoesOn()
    {
        var run = await Run.OfAsync("""
            {"text":"compressor won't start"}
            {"answer":{"choice":7}}
            nonsense
            {"answer":{"choice":"brenholt-ws"}}
            """, "talk", "--json", "--content", Shipped.Folder);

        Assert.Equal(1, run.Code);
        Assert.True(run.Json[1].TryGetProperty("error", out _));
        Assert.True(run.Json[2].TryGetProperty("error", out _));
        Assert.Equal("role", Kind(run.Json[3]));
    }

    [Fact]
    public async Task Talk_Lines_NumbersChooseAndTheCaseIsKept()
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        var first = await Run.OfAsync(
            "compressor won't start\n1\n", "talk", "--data", file, "--content", Shipped.Folder);
        string name = first.Lines[0].Split(' ')[1].TrimEnd('.');

        var second = await Run.OfAsync("2\n", "talk", "--data", file, "--case", name, "--content", Shipped.Folder);

        Assert.Contains("Who is at the unit?", first.Output, StringComparison.Ordinal);
        Assert.Contains("  2  Technician", first.Output, StringComparison.Ordinal);
        Assert.Contains("At the unit: Technician.", second.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Talk_TypedWords_BearTheQuestionThatWasShown()
    {
        await using var store = new MemoryCaseStore(TimeProvider.System);
        var adapter = new LocalChatAdapter(new AssistantBot(new CaseDesk(store, () => new WalkResponder())));
        using var output = new StringWriter();
        using var input = new StringReader("it hums\n");

        await new TerminalTalk(new Streams(input, output, output), new CaseConversation(adapter, "a"))
            .RunAsync(CancellationToken.None);

        Assert.Contains("Given: it hums to q0", output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task TalkJson_WordsToAQuestionThatIsNotOpen_AreNotTakenForTheOpenOne()
    {
        const string walk = """
            {"text":"compressor won't start"}
            {"answer":{"choice":"brenholt-ws"}}
            {"answer":{"choice":"owner"}}

            """;
        var opened = await Run.OfAsync(walk, "talk", "--json", "--content", Shipped.Folder);
        var question = opened.Json[2].GetProperty("question");
        string? words = question.GetProperty("options")[0].GetProperty("label").GetString();

        var run = await Run.OfAsync(
            walk + JsonSerializer.Serialize(new { text = words, question = "asked-elsewhere" }) + "\n"
            + JsonSerializer.Serialize(new { text = words }), "talk", "--json", "--content", Shipped.Folder);

        Assert.Equal(TextOf(run.Json[2]), TextOf(run.Json[3]));
        Assert.NotEqual(TextOf(run.Json[2]), TextOf(run.Json[4]));
    }

    [Fact]
    public async Task Talk_UnknownCase_SaysSo()
    {
        using var folder = new TemporaryFolder();

        var run = await Run.OfAsync(
            "", "talk", "--data", folder.File("cases.db"), "--case", "nobody", "--content", Shipped.Folder);

        Assert.Equal(2, run.Code);
        Assert.Contains("leave --case out", run.Error, StringComparison.Ordinal);
    }

    private static string? Kind(JsonElement reply) => reply.GetProperty("question").GetProperty("kind").GetString();

    private static string? TextOf(JsonElement reply) => reply.GetProperty("question").GetProperty("text").GetString();

    private static int CautionsOf(JsonElement reply) =>
        reply.GetProperty("segments").EnumerateArray().Count(s => s.GetProperty("kind").GetString() == "caution");

    private static string WithoutCase(Run run) =>
        run.Output.Replace(run.Json[0].GetProperty("case").GetString()!, "CASE", StringComparison.Ordinal);
}
