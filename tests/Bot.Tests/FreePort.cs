using System.Net;
using System.Net.Sockets;

namespace DxAssistant.Bot.Tests;

/// <summary>A port of this machine that nobody listens at, for a program that must be told one.</summary>
internal static class FreePort
{
    public static int Find()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
