using System.Text;
using BenchmarkDotNet.Loggers;

namespace DxAssistant.Benchmarks.Ratios;

/// <summary>Keeps what BenchmarkDotNet says, to be shown when something goes wrong.</summary>
internal sealed class LogCapture : ILogger
{
    private readonly StringBuilder _text = new();

    public string Id => nameof(LogCapture);

    public int Priority => 0;

    public string Text => _text.ToString();

    public void Write(LogKind logKind, string text) => _text.Append(text);

    public void WriteLine() => _text.Append('\n');

    public void WriteLine(LogKind logKind, string text) => _text.Append(text).Append('\n');

    public void Flush() { }
}
