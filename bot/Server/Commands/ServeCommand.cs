using System.CommandLine;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using DxAssistant.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Channels;
using DxAssistant.Server.Operations;
using DxAssistant.Server.Serving;
using Microsoft.AspNetCore.Connections;

namespace DxAssistant.Server.Commands;

/// <summary>What the program does without a command: serve the web chat and the bot's front on this machine.</summary>
internal sealed class ServeCommand(Streams streams)
{
    private const int UsualPort = 5180;
    private const int PortsTried = 20;

    private readonly Option<int?> port = new("--port")
    {
        Description = $"The port. Default: {UsualPort}, or the next free one.",
        HelpName = "NUMBER",
    };

    private readonly Option<string> listen = new("--listen")
    {
        Description = "The address of this machine to listen on.",
        HelpName = "ADDRESS",
        DefaultValueFactory = _ => "127.0.0.1",
    };

    private readonly Option<string[]> serviceUrl = new("--service-url")
    {
        Description = "A channel, besides this machine, to which replies may be posted. May be given several times.",
        HelpName = "URL",
    };

    private readonly Option<int> pace = new("--pace")
    {
        Description = $"Requests a second that one client may make; 0 for no limit. Default: {Pace.Usual}.",
        HelpName = "NUMBER",
        DefaultValueFactory = _ => Pace.Usual,
    };

    private readonly Option<string?> content = CommonOptions.Content();
    private readonly Option<string?> data = CommonOptions.Data("cases.db in your own program folder");

    public void AddTo(Command root)
    {
        foreach (Option option in new Option[] { port, listen, serviceUrl, pace, content, data }) root.Add(option);
        root.SetAction((call, cancel) => RunAsync(call, cancel));
    }

    private async Task<int> RunAsync(ParseResult call, CancellationToken cancel)
    {
        if (ReadSettings(call, out var settings) is { } wrong) return streams.Refuse(wrong);
        int opened = OpenedContent.Open(call.GetValue(content), streams, out var live);
        if (live is null) return opened;
        using (live)
        {
            string file = call.GetValue(data) ?? CaseFile.Default;
            try
            {
                await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
                live.Watch(TimeProvider.System);
                return await ServeAsync(settings, call.GetValue(port) is null, store, live, file, cancel);
            }
            catch (CaseFileException error)
            {
                return streams.Refuse(error.Message);
            }
        }
    }

    private string? ReadSettings(ParseResult call, out ServerSettings settings)
    {
        settings = new ServerSettings(IPAddress.Loopback, call.GetValue(port) ?? UsualPort, []);
        string name = call.GetValue(listen)!;
        var address = name == "localhost"
            ? IPAddress.Loopback : IPAddress.TryParse(name, out var parsed) ? parsed : null;
        if (address is null) return $"{name} is not an address: leave --listen out to listen on 127.0.0.1";
        if (!IPAddress.IsLoopback(address))
        {
            return $"{name} can be reached by others, and there are no accounts yet, so anybody could read the cases: "
                + "leave --listen out, and reach this machine through a tunnel or a proxy that asks who you are";
        }

        settings = settings with { Pace = call.GetValue(pace) };
        if (settings.Pace < 0) return $"{settings.Pace} is not a pace: give requests a second, or 0 for no limit";
        if (settings.Port is < 0 or > 65535) return $"{settings.Port} is not a port: give one from 0 to 65535";
        foreach (string text in call.GetValue(serviceUrl) ?? [])
        {
            if (!Uri.TryCreate(text, UriKind.Absolute, out var url) || url.Scheme is not ("http" or "https"))
            {
                return $"{text} is not an address of a channel: give it as https://host/";
            }

            settings = settings with { ServiceUrls = settings.ServiceUrls.Add(url) };
        }

        settings = settings with { Address = address };
        return null;
    }

    private async Task<int> ServeAsync(
        ServerSettings settings, bool mayMove, ICaseStore store, LiveContent live, string file,
        CancellationToken cancel)
    {
        for (int tried = 0; ; tried++)
        {
            await using var app = ChatServer.Build(settings with { PageShelf = ShelfBeside(file) }, store, () => live.Current);
            try
            {
                await app.StartAsync(cancel);
            }
            catch (IOException error) when (error.InnerException is AddressInUseException or SocketException)
            {
                if (!mayMove || tried == PortsTried)
                    return streams.Refuse($"port {settings.Port} is taken: name another with --port");
                settings = settings with { Port = settings.Port + 1 };
                continue;
            }

            Announce(app, live, file);
            await app.WaitForShutdownAsync(cancel);
            return ExitCode.Done;
        }
    }

    // Beside the cases that were walked on them.
    private static string ShelfBeside(string file) => Path.ChangeExtension(Path.GetFullPath(file), null) + "-pages";

    private void Announce(WebApplication app, LiveContent live, string file)
    {
        streams.Out.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"Open {app.Urls.First()}/ in a browser. Ctrl+C ends it."));
        streams.Out.WriteLine($"Content version {live.Current.Version}; cases in {file}");
        streams.Out.WriteLine(BotFront.HasAppId(app.Configuration)
            ? $"Bot channels: {BotFront.Path}, callers sign in."
            : $"Bot channels: {BotFront.Path} has no app id, so callers are NOT asked who they are; it answers on this machine only.");
        streams.Out.Flush();
    }
}
