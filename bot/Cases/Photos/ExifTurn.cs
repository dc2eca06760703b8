using System.Buffers.Binary;

namespace DxAssistant.Cases.Photos;

/// <summary>
/// Which way up a picture is: all that is kept of its Exif notes, which also hold place, time and camera.
/// </summary>
/// <remarks>Source: Exif 2.3 (CIPA DC-008), 4.6.4, tag 274, and TIFF 6.0 for the directory it stands in.</remarks>
internal static class ExifTurn
{
    private const ushort Orientation = 0x0112;

    /// <summary>2 to 8; null where there is none, or the picture is upright.</summary>
    public static byte? In(ReadOnlySpan<byte> app1)
    {
        if (!app1.StartsWith("Exif\0\0"u8)) return null;
        var tiff = app1[6..];
        if (tiff.Length < 10) return null;
        bool small = tiff.StartsWith("II"u8);
        if (!small && !tiff.StartsWith("MM"u8)) return null;
        uint start = small
            ? BinaryPrimitives.ReadUInt32LittleEndian(tiff[4..])
            : BinaryPrimitives.ReadUInt32BigEndian(tiff[4..]);
        if (start > tiff.Length - 2) return null;
        int count = Short(tiff[(int)start..], small);
        for (int entry = 0, at = (int)start + 2; entry < count && at + 12 <= tiff.Length; entry++, at += 12)
            if (Short(tiff[at..], small) == Orientation && Short(tiff[(at + 8)..], small) is >= 2 and <= 8 and var turn)
                return (byte)turn;
        return null;
    }

    /// <summary>A segment that says nothing else.</summary>
    public static byte[] Segment(byte turn) =>
    [
        0xFF, 0xE1, 0, 34, .. "Exif\0\0"u8, .. "MM\0*"u8, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, turn, 0, 0,
        0, 0, 0, 0,
    ];

    private static ushort Short(ReadOnlySpan<byte> at, bool small) =>
        small ? BinaryPrimitives.ReadUInt16LittleEndian(at) : BinaryPrimitives.ReadUInt16BigEndian(at);
}
