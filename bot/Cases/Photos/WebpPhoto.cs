using System.Buffers.Binary;

namespace DxAssistant.Cases.Photos;

/// <summary>WebP pictures, chunk by chunk. Moving ones are not taken.</summary>
/// <remarks>Source: RFC 9649, WebP Image Format, 2.3 to 2.7.</remarks>
internal static class WebpPhoto
{
    private const int Header = 12;
    private const byte HasProfile = 0x20, HasExif = 0x08, HasXmp = 0x04;

    /// <summary>The picture alone; null when it is no whole still WebP picture.</summary>
    public static byte[]? Clean(byte[] from)
    {
        if (from.Length < Header || !from.AsSpan().StartsWith("RIFF"u8) || !from.AsSpan(8).StartsWith("WEBP"u8))
            return null;
        long end = 8L + BinaryPrimitives.ReadUInt32LittleEndian(from.AsSpan(4));
        if (end > from.Length || end < Header) return null;
        var to = new PhotoWriter(from);
        to.Copy(0, Header);
        bool drawn = false;
        for (int at = Header; at + 8 <= end;)
        {
            uint length = BinaryPrimitives.ReadUInt32LittleEndian(from.AsSpan(at + 4));
            long next = at + 8L + length + (length & 1);
            if (next > end) return null;
            string type = System.Text.Encoding.ASCII.GetString(from, at, 4);
            if (type is "ANIM" or "ANMF") return null;
            drawn |= type is "VP8 " or "VP8L";
            if (type is "VP8 " or "VP8L" or "ALPH") to.Copy(at, (int)(next - at));
            else if (type == "VP8X") AddHead(to, from.AsSpan(at, (int)(next - at)));
            at = (int)next;
        }

        return drawn ? Sized(to.End()) : null;
    }

    private static void AddHead(PhotoWriter to, ReadOnlySpan<byte> chunk)
    {
        byte[] head = chunk.ToArray();
        if (head.Length > 8) head[8] &= unchecked((byte)~(HasProfile | HasExif | HasXmp));
        to.Add(head);
    }

    private static byte[] Sized(byte[] made)
    {
        BinaryPrimitives.WriteUInt32LittleEndian(made.AsSpan(4), (uint)(made.Length - 8));
        return made;
    }
}
