using System.Buffers;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>A row of values for one question, all 0 at first; its memory serves the next question.</summary>
internal readonly struct Scratch<T> : IDisposable where T : struct
{
    private readonly T[] values;

    /// <param name="isCleared">False: whatever was there before is left.</param>
    public Scratch(int length, bool isCleared = true)
    {
        (values, Length) = (ArrayPool<T>.Shared.Rent(length), length);
        if (isCleared)
            Array.Clear(values, 0, length);
    }

    public int Length { get; }

    public ref T this[int at] => ref values[at];

    public Span<T> AsSpan() => values.AsSpan(0, Length);

    public void Dispose() => ArrayPool<T>.Shared.Return(values);
}
