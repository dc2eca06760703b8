using System.Buffers;

namespace DxAssistant.Graph.Planning.Search;

/// <summary>Items one after another in an array that is borrowed, and may be given back.</summary>
internal sealed class BorrowedList<T>
    where T : unmanaged
{
    private const int FirstRoom = 1024;

    private T[] items = ArrayPool<T>.Shared.Rent(FirstRoom);

    public int Count { get; private set; }

    /// <summary>All of them; as long as none is added.</summary>
    public Span<T> Items => items.AsSpan(0, Count);

    public void Add(T item) => Add(1)[0] = item;

    /// <summary>Adds so many, to be written by the caller.</summary>
    public Span<T> Add(int more)
    {
        if (Count + more > items.Length) Grow(Count + more);
        Count += more;
        return items.AsSpan(Count - more, more);
    }

    private void Grow(int least)
    {
        T[] longer = ArrayPool<T>.Shared.Rent(Math.Max(least, 2 * items.Length));
        Items.CopyTo(longer);
        ArrayPool<T>.Shared.Return(items);
        items = longer;
    }

    /// <summary>Gives back what was borrowed; nothing can be asked afterwards.</summary>
    public void GiveBack()
    {
        ArrayPool<T>.Shared.Return(items);
        (items, Count) = ([], 0);
    }
}
