using System.Buffers;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>A row of sums for one question, all 0 at first; its memory serves the next question.</summary>
internal readonly struct Scratch : IDisposable
{
    private readonly double[] sums;

    public Scratch(int length)
    {
        (sums, Length) = (ArrayPool<double>.Shared.Rent(length), length);
        Array.Clear(sums, 0, length);
    }

    public int Length { get; }

    public ref double this[int at] => ref sums[at];

    public Span<double> AsSpan() => sums.AsSpan(0, Length);

    public void Dispose() => ArrayPool<double>.Shared.Return(sums);
}
