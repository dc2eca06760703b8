using System.Buffers.Binary;

namespace DxAssistant.Cases.Photos;

/// <summary>JPEG pictures, segment by segment.</summary>
/// <remarks>
/// Source: ITU-T T.81, annex B (markers and segments); JFIF 1.02 and Exif 2.3 for what stands in APP0 and APP1.
/// </remarks>
internal static class JpegPhoto
{
    private const byte Sos = 0xDA, Eoi = 0xD9, App0 = 0xE0, App1 = 0xE1, Adobe = 0xEE;

    /// <summary>The picture alone, the right way up; null when it is no whole JPEG picture.</summary>
    public static byte[]? Clean(byte[] from)
    {
        if (from is not [0xFF, 0xD8, 0xFF, ..]) return null;
        var to = new PhotoWriter(from);
        to.Add([0xFF, 0xD8]);
        bool framed = false, upright = false;
        for (int at = 2; ;)
        {
            while (at + 1 < from.Length && from[at] == 0xFF && from[at + 1] == 0xFF) at++;
            if (at + 1 >= from.Length || from[at] != 0xFF) return null;
            byte marker = from[at + 1];
            if (marker == Eoi) break;
            if (at + 3 >= from.Length || marker is 0 or 1 or >= 0xD0 and <= 0xD8) return null;
            int length = BinaryPrimitives.ReadUInt16BigEndian(from.AsSpan(at + 2));
            int end = at + 2 + length;
            if (length < 2 || end > from.Length) return null;
            framed |= marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC);
            var body = from.AsSpan(at + 4, length - 2);
            if (marker == App1 && !upright && ExifTurn.In(body) is { } turn)
            {
                to.Add(ExifTurn.Segment(turn));
                upright = true;
            }

            if (marker == Sos) end = Scan(from, end);
            if (marker == App0 && body.StartsWith("JFIF\0"u8) && body.Length >= 14) AddJfif(to, body);
            else if (IsPicture(marker, body)) to.Copy(at, end - at);
            at = end;
        }

        to.Add([0xFF, Eoi]);
        return framed ? to.End() : null;
    }

    private static bool IsPicture(byte marker, ReadOnlySpan<byte> body) => marker switch
    {
        Adobe => body.StartsWith("Adobe"u8),
        >= 0xE0 or < 0xC0 => false,
        _ => true,
    };

    // Without the small copy of the picture that may follow.
    private static void AddJfif(PhotoWriter to, ReadOnlySpan<byte> body)
    {
        to.Add([0xFF, App0, 0, 16]);
        to.Add(body[..12]);
        to.Add([0, 0]);
    }

    // To the next marker that is neither a stuffed byte nor a restart.
    private static int Scan(byte[] from, int at)
    {
        while (at + 1 < from.Length && !(from[at] == 0xFF && from[at + 1] is not (0 or 0xFF or >= 0xD0 and <= 0xD7)))
            at++;
        return at;
    }
}
