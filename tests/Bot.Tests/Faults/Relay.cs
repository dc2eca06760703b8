using System.Net;
using System.Net.Sockets;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>The network between a program and its database: carries every byte on until it is told to be cut.</summary>
internal sealed class Relay : IAsyncDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource end = new();
    private readonly Lock gate = new();
    private readonly HashSet<Socket> ends = [];
    private readonly int port;
    private readonly Task accepting;
    private volatile TaskCompletionSource open = Open();
    private volatile bool refuses;

    /// <param name="port">Where the database listens, on this machine.</param>
    public Relay(int port)
    {
        this.port = port;
        listener.Start();
        accepting = Task.Run(AcceptAllAsync);
    }

    /// <summary>Where the program finds it.</summary>
    public int Port => ((IPEndPoint)listener.LocalEndpoint).Port;

    /// <summary>
    /// Carries nothing on in either direction, and tells nobody: what is sent is kept until it goes on.
    /// </summary>
    public void Hold() => open = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>Ends every connection at once, and each new one as soon as it is there.</summary>
    public void Close()
    {
        refuses = true;
        lock (gate)
        {
            foreach (var one in ends) one.Close(0);
            ends.Clear();
        }
    }

    /// <summary>Goes on after either.</summary>
    public void GoOn()
    {
        refuses = false;
        open.TrySetResult();
    }

    public async ValueTask DisposeAsync()
    {
        await end.CancelAsync();
        listener.Stop();
        await accepting;
        Close();
        GoOn();
        end.Dispose();
    }

    private async Task AcceptAllAsync()
    {
        try
        {
            while (true) Carry(await listener.AcceptSocketAsync(end.Token));
        }
        catch (Exception error) when (error is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // The end has come.
        }
    }

    private void Carry(Socket near)
    {
        if (refuses)
        {
            near.Close(0);
            return;
        }

        var far = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        near.NoDelay = true;
        lock (gate) ends.UnionWith([near, far]);
        _ = Task.Run(async () =>
        {
            try
            {
                await far.ConnectAsync(IPAddress.Loopback, port);
                await Task.WhenAny(PumpAsync(near, far), PumpAsync(far, near));
            }
            catch (Exception error) when (error is SocketException or ObjectDisposedException)
            {
                // The database is not there, or the network was closed.
            }

            near.Close();
            far.Close();
            lock (gate) ends.ExceptWith([near, far]);
        });
    }

    private async Task PumpAsync(Socket from, Socket to)
    {
        byte[] bytes = new byte[16 * 1024];
        try
        {
            while (await from.ReceiveAsync(bytes) is > 0 and var count)
            {
                await open.Task;
                await to.SendAsync(bytes.AsMemory(0, count));
            }
        }
        catch (Exception error) when (error is SocketException or ObjectDisposedException)
        {
            // One of the ends is gone.
        }
    }

    private static TaskCompletionSource Open()
    {
        var whole = new TaskCompletionSource();
        whole.SetResult();
        return whole;
    }
}
