using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Server.Commands;

namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>The program without a command, over the shipped pages.</summary>
public sealed partial class ServeCommandTests
{
    [Fact]
    public async Task Serve_PrintsAnAddressThatAnswers_AndEndsWhenAsked()
    {
        using var folder = new TemporaryFolder();
        using var stop = new CancellationTokenSource();
        using var output = new SharedText();
        var streams = new Streams(TextReader.Null, output, output);
        string[] arguments = ["--port", "0", "--data", folder.File("cases.db"), "--content", Shipped.Folder];
        var serving = Task.Run(() => CommandLine.RunAsync(arguments, streams, stop.Token));

        // Bounded, so that a program that never speaks fails the test instead of hanging it.
        for (int i = 0; i < 600 && !serving.IsCompleted
            && !output.Text.Contains("Bot channels", StringComparison.Ordinal); i++) await Task.Delay(100);
        string said = output.Text;
        using var http = new HttpClient();
        using var response = await http.GetAsync(Address().Match(said).Value);
        await stop.CancelAsync();

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Contains("NOT asked who they are", said, StringComparison.Ordinal);
        Assert.Equal(0, await serving);
    }

    [Fact]
    public async Task Serve_NamedPortIsTaken_SaysSoInOneLine()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        string port = ((IPEndPoint)taken.LocalEndpoint).Port.ToString(CultureInfo.InvariantCulture);
        using var folder = new TemporaryFolder();

        var run = await Run.OfAsync("", "--port", port, "--data", folder.File("cases.db"), "--content", Shipped.Folder);

        Assert.Equal(2, run.Code);
        Assert.Equal($"port {port} is taken: name another with --port\n", run.Error);
    }

    [Fact]
    public async Task Serve_DatabaseCannotBeReached_SaysWhyInOneLine()
    {
        using var folder = new TemporaryFolder();

        var run = await Run.OfAsync("", "--store", "Host=127.0.0.1;Port=1;Username=dx;Timeout=1",
            "--data", folder.File("cases.db"), "--content", Shipped.Folder);

        Assert.Equal(2, run.Code);
        Assert.StartsWith("the database cannot be used for accounts", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Serve_DataFileIsNoCaseFile_SaysWhatToDo()
    {
        using var folder = new TemporaryFolder();
        await File.WriteAllTextAsync(
            folder.File("letter.txt"), string.Concat(Enumerable.Repeat("Dear customer, ", 200)));

        var run = await Run.OfAsync("", "--data", folder.File("letter.txt"), "--content", Shipped.Folder);

        Assert.Equal(2, run.Code);
        Assert.Contains("--data", run.Error, StringComparison.Ordinal);
    }

    /// <summary>Text that one thread writes while another reads it.</summary>
    private sealed class SharedText : TextWriter
    {
        private readonly System.Text.StringBuilder text = new();

        public override System.Text.Encoding Encoding => System.Text.Encoding.UTF8;

        public string Text
        {
            get
            {
                lock (text) return text.ToString();
            }
        }

        public override void Write(char value)
        {
            lock (text) text.Append(value);
        }
    }

    [GeneratedRegex("http://[0-9.:]+/")]
    private static partial Regex Address();
}
