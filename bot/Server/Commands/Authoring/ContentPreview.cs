using System.CommandLine;
using System.Net;
using System.Net.Sockets;
using DxAssistant.Server.Workbench.Preview;
using Microsoft.AspNetCore.Connections;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>
/// <c>content preview [folder]</c>: the pages as they will be seen, anew at each save, on this machine only.
/// </summary>
internal static class ContentPreview
{
    private const int UsualPort = 5190;

    public static Command Make(Streams streams)
    {
        Argument<string?> folder = ContentCommand.Folder();
        var port = new Option<int>("--port")
        {
            Description = "The port.", HelpName = "NUMBER", DefaultValueFactory = _ => UsualPort,
        };
        var preview = new Command("preview",
            "Show the pages as they will be seen, with what is wrong, and play walks; follows each save.") { folder,
                port };
        preview.SetAction((call, cancel) => RunAsync(call.GetValue(folder), call.GetValue(port), streams, cancel));
        return preview;
    }

    private static async Task<int> RunAsync(string? folder, int port, Streams streams, CancellationToken cancel)
    {
        string root = folder ?? ContentCheck.UsualFolder;
        if (!Directory.Exists(root)) return streams.Refuse($"there is no folder {root}; name the folder of the pages");
        if (port is < IPEndPoint.MinPort or > IPEndPoint.MaxPort)
            return streams.Refuse($"there is no port {port}: name one up to {IPEndPoint.MaxPort}");
        var pages = new PreviewPages(root);
        pages.Reload();
        using var followed = new FollowedPages(pages, root, streams.Error);
        await using WebApplication app = PreviewServer.Build(pages, port);
        try
        {
            await app.StartAsync(cancel);
        }
        catch (IOException error) when (error.InnerException is AddressInUseException or SocketException)
        {
            return streams.Refuse($"port {port} is taken: name another with --port");
        }

        streams.Out.WriteLine($"Open {app.Urls.First()}/ in a browser. Ctrl+C ends it.");
        await app.WaitForShutdownAsync(cancel);
        return ExitCode.Done;
    }
}
