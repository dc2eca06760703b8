using System.Collections.Concurrent;
using System.Net;
using System.Text;

namespace DxAssistant.Bot.Tests.Server.Operations;

/// <summary>Takes what is sent to a collector and keeps it, by the path it was sent to.</summary>
/// <remarks>
/// Source, from memory: OTLP over HTTP, <c>/v1/traces</c> and <c>/v1/metrics</c>, protocol buffers: texts stand in them
/// as UTF-8.
/// </remarks>
internal sealed class ListeningCollector : IDisposable
{
    private readonly HttpListener listener = new();
    private readonly ConcurrentDictionary<string, string> received = new(StringComparer.Ordinal);
    private readonly Task listening;

    public ListeningCollector()
    {
        Address = FormattableString.Invariant($"http://127.0.0.1:{FreePort.Find()}");
        listener.Prefixes.Add($"{Address}/");
        listener.Start();
        listening = Task.Run(ListenAsync);
    }

    public string Address { get; }

    public string Traces => received.GetValueOrDefault("/v1/traces", "");

    public string Figures => received.GetValueOrDefault("/v1/metrics", "");

    public void Dispose()
    {
        listener.Close();
        listening.Wait();
    }

    private async Task ListenAsync()
    {
        try
        {
            while (true)
            {
                var context = await listener.GetContextAsync();
                using var reader = new StreamReader(context.Request.InputStream, Encoding.Latin1);
                string body = await reader.ReadToEndAsync();
                received.AddOrUpdate(context.Request.Url!.AbsolutePath, body, (_, before) => before + body);
                context.Response.Close();
            }
        }
        catch (Exception error) when (error is HttpListenerException or ObjectDisposedException)
        {
            // The end of the test.
        }
    }
}
