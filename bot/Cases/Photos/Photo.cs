using System.Security.Cryptography;

namespace DxAssistant.Cases.Photos;

/// <summary>A photo fit to be kept: of a known sort, and with nothing in it but the picture.</summary>
/// <param name="Type">The media type, found from the bytes.</param>
public sealed record Photo(string Type, byte[] Bytes)
{
    /// <summary>The largest photo taken, in bytes.</summary>
    public const int Largest = 8 * 1024 * 1024;

    /// <summary>The name of its bytes: their SHA-256, in lower-case hexadecimal.</summary>
    public string Hash => HashOf(Bytes);

    /// <summary>
    /// Takes bytes from outside: finds out what they are and leaves away all that is no picture, such as the place
    /// where it was taken, the camera's number, a small copy, and whatever was put behind its end.
    /// </summary>
    /// <returns>
    /// Null when they are no whole JPEG, PNG or WebP picture, or are more than <see cref="Largest"/>.
    /// </returns>
    public static Photo? Take(byte[] bytes)
    {
        if (bytes.Length > Largest) return null;
        if (JpegPhoto.Clean(bytes) is { } jpeg) return new Photo("image/jpeg", jpeg);
        if (PngPhoto.Clean(bytes) is { } png) return new Photo("image/png", png);
        return WebpPhoto.Clean(bytes) is { } webp ? new Photo("image/webp", webp) : null;
    }

    public static string HashOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Whether a text has the form of a hash.</summary>
    public static bool IsHash(string text) =>
        text.Length == 64 && text.All(c => char.IsAsciiDigit(c) || c is >= 'a' and <= 'f');
}
