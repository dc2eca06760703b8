using System.Buffers.Binary;

namespace DxAssistant.Cases.Photos;

/// <summary>PNG pictures, chunk by chunk.</summary>
/// <remarks>
/// Source: W3C Portable Network Graphics (PNG) Specification, third edition, 5 (datastream) and 11 (chunks).
/// </remarks>
internal static class PngPhoto
{
    // The picture and its colours; notes, times, Exif and moving pictures are not among them.
    private static readonly HashSet<string> Kept = new(StringComparer.Ordinal)
    {
        "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "sBIT", "bKGD", "pHYs",
    };

    /// <summary>The picture alone; null when it is no whole PNG picture.</summary>
    public static byte[]? Clean(byte[] from)
    {
        if (!from.AsSpan().StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]))
            return null;
        var to = new PhotoWriter(from);
        to.Copy(0, 8);
        bool drawn = false;
        for (int at = 8; at + 12 <= from.Length;)
        {
            uint length = BinaryPrimitives.ReadUInt32BigEndian(from.AsSpan(at));
            if (length > from.Length - at - 12) return null;
            string type = System.Text.Encoding.ASCII.GetString(from, at + 4, 4);
            if (at == 8 && type != "IHDR") return null;
            drawn |= type == "IDAT";
            if (Kept.Contains(type)) to.Copy(at, (int)length + 12);
            if (type == "IEND") return drawn ? to.End() : null;
            at += (int)length + 12;
        }

        return null;
    }
}
