using System.Net;
using System.Net.Sockets;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>Passes connections on to a port of this machine until it is cut: then nothing passes and nobody is told, as when a cable is
/// out. What was on its way arrives when it is mended.</summary>
internal sealed class Relay : IDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource end = new();
    private readonly int to;
    private TaskCompletionSource whole = new();

    public Relay(int to)
    {
        this.to = to;
        whole.SetResult();
        listener.Start();
        _ = AcceptAsync();
    }

    public int Port => ((IPEndPoint)listener.LocalEndpoint).Port;

    public void Cut() => whole = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);

    public void Mend() => whole.TrySetResult();

    public void Dispose()
    {
        end.Cancel();
        listener.Dispose();
        end.Dispose();
    }

    private async Task AcceptAsync()
    {
        try
        {
            while (true) _ = PassAsync(await listener.AcceptTcpClientAsync(end.Token));
        }
        catch (Exception error) when (error is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // The end has come.
        }
    }

    private async Task PassAsync(TcpClient one)
    {
        using var from = one;
        using var other = new TcpClient();
        try
        {
            await whole.Task.WaitAsync(end.Token);
            await other.ConnectAsync(IPAddress.Loopback, to, end.Token);
            await Task.WhenAny(PassAsync(from.GetStream(), other.GetStream()), PassAsync(other.GetStream(), from.GetStream()));
        }
        catch (Exception error) when (error is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // One of the two is gone.
        }
    }

    private async Task PassAsync(NetworkStream from, NetworkStream into)
    {
        byte[] some = new byte[16 * 1024];
        try
        {
            while (await from.ReadAsync(some, end.Token) is > 0 and var read)
            {
                await whole.Task.WaitAsync(end.Token);
                await into.WriteAsync(some.AsMemory(0, read), end.Token);
            }
        }
        catch (Exception error) when (error is OperationCanceledException or IOException or ObjectDisposedException)
        {
            // One of the two is gone.
        }
    }
}
