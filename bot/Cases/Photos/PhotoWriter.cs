using System.Buffers;

namespace DxAssistant.Cases.Photos;

/// <summary>The cleaned picture while it is copied piece by piece.</summary>
internal sealed class PhotoWriter(byte[] from)
{
    private readonly ArrayBufferWriter<byte> to = new(Math.Max(1, from.Length));

    public void Copy(int start, int length) => to.Write(from.AsSpan(start, length));

    public void Add(ReadOnlySpan<byte> bytes) => to.Write(bytes);

    public byte[] End() => to.WrittenSpan.ToArray();
}
