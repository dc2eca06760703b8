using System.CommandLine;
using System.Net;
using DxAssistant.Server.Operations;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Commands.Settings;

/// <summary>The options that say where the server listens, and for whom.</summary>
internal sealed class ListenOptions
{
    private const int UsualPort = 5180;

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

    private readonly Option<string[]> host = new("--host")
    {
        Description = "A name under which others reach this server. May be given several times.",
        HelpName = "NAME",
    };

    private readonly Option<string?> certificate = new("--certificate")
    {
        Description = "The server's certificate with its key, PKCS #12; its password in DX_CERTIFICATE_PASSWORD.",
        HelpName = "FILE",
    };

    private readonly Option<bool> proxy = new("--behind-proxy")
    {
        Description = "A proxy in front of this server keeps others from reading along (HTTPS).",
    };

    public void AddTo(Command root)
    {
        foreach (Option option in new Option[] { port, listen, serviceUrl, host, certificate, proxy, pace })
            root.Add(option);
    }

    /// <summary>Whether another port may be taken when this one is not free.</summary>
    public bool MayMove(ParseResult call) => call.GetValue(port) is null;

    /// <summary>Reads what the call says.</summary>
    /// <returns>What is wrong with it; null when nothing is.</returns>
    public string? Read(ParseResult call, out ServerSettings settings)
    {
        settings = new ServerSettings(IPAddress.Loopback, call.GetValue(port) ?? UsualPort, []);
        string name = call.GetValue(listen)!;
        var address = name == "localhost"
            ? IPAddress.Loopback : IPAddress.TryParse(name, out var parsed) ? parsed : null;
        if (address is null) return $"{name} is not an address: leave --listen out to listen on 127.0.0.1";
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

        if (call.GetValue(certificate) is { } file && !File.Exists(file))
            return $"{file} is not there: name the certificate's file";
        settings = settings with
        {
            Address = address,
            Hosts = [.. call.GetValue(host) ?? []],
            Certificate = call.GetValue(certificate),
            BehindProxy = call.GetValue(proxy),
        };
        return null;
    }
}
