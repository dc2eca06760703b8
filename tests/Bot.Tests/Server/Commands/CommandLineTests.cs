using DxAssistant.Bot.Tests.Cases;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class CommandLineTests
{
    [Theory]
    [InlineData("reed")]
    [InlineData("--prot", "5")]
    [InlineData("--port", "many")]
    [InlineData("--port", "70000")]
    [InlineData("--listen", "0.0.0.0")]
    [InlineData("--listen", "::")]
    [InlineData("--listen", "192.0.2.7")]
    [InlineData("--listen", "somewhere")]
    [InlineData("--service-url", "channel.example")]
    [InlineData("--company", "http://company.example/")]
    [InlineData("--company", "https://company.example/")]
    [InlineData("--company-client", "dx")]
    [InlineData("--company", "https://company.example/", "--company-client", "dx", "--company-groups", "groups")]
    [InlineData("--company", "https://company.example/", "--company-client", "dx", "--company-groups", "groups",
        "--company-role", "desk")]
    [InlineData("--company", "https://company.example/", "--company-client", "dx", "--company-groups", "groups",
        "--company-role", "all=king")]
    [InlineData("--keep-personal", "0")]
    [InlineData("--keep-personal", "soon")]
    [InlineData("cases", "person", "Al", "out.json")]
    [InlineData("--content", "no-such-folder")]
    [InlineData("talk", "--content", "no-such-folder")]
    [InlineData("content", "check", "--fix")]
    [InlineData("content", "check", "no-such-folder")]
    [InlineData("content", "preview", ".", "--port", "70000")]
    [InlineData("content", "import", "a.csv", "--to", "b", "--table", "rows")]
    [InlineData("cases", "verify", "--data", "no-such-file.db")]
    [InlineData("cases", "export", "a", "a.json", "--data", "no-such-file.db")]
    [InlineData("cases", "person", "Ann", "a.json", "--data", "no-such-file.db")]
    [InlineData("accounts", "list", "--accounts", "no-such-file.db")]
    public async Task RunAsync_WrongCall_OneLineOnErrorAndCodeTwo(params string[] arguments)
    {
        var run = await Run.OfAsync("", arguments);

        Assert.Equal(2, run.Code);
        Assert.Equal("", run.Output);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.False(File.Exists("no-such-file.db"));
    }

    [Theory]
    [InlineData("many is not a whole number for --port: --help lists what there is", "--port", "many")]
    [InlineData("there is no command or option verfy here: --help lists what there is", "cases", "verfy")]
    public async Task RunAsync_WrongCall_SaysWhatStoodThere(string said, params string[] arguments) =>
        Assert.Equal(said, (await Run.OfAsync("", arguments)).Error.Trim());

    [Fact]
    public async Task Serve_AddressOthersCanReach_SaysWhyNotAndWhatInstead()
    {
        var run = await Run.OfAsync("", "--listen", "0.0.0.0");

        Assert.Contains("no accounts yet", run.Error, StringComparison.Ordinal);
        Assert.Contains("leave --listen", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("talk")]
    public async Task Start_ContentWithErrors_PrintsThemAndStartsNothing(string command)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("index.md"), "---\nkind: nonsense\nid: index\n---\n# Index\nText.\n");

        var run = await Run.OfAsync(
            "", [.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--content", folder.Path]);

        Assert.Equal(1, run.Code);
        Assert.Contains("index.md:", run.Error, StringComparison.Ordinal);
        Assert.Contains(": error[", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Help_ListsEveryCommand()
    {
        var run = await Run.OfAsync("", "--help");

        string[] commands = ["talk", "match", "read", "glyph", "calc", "plan", "content"];
        Assert.All(commands, command => Assert.Contains(command, run.Output, StringComparison.Ordinal));
    }
}
