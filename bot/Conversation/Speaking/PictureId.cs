using System.Security.Cryptography;
using System.Text;

namespace DxAssistant.Conversation.Speaking;

/// <summary>The name of a picture: what it is of, and what it looks like in short.</summary>
internal static class PictureId
{
    /// <summary>The kind and the first eight hexadecimal digits of the SHA-256 of the drawing.</summary>
    public static string Of(string kind, string svg) =>
        $"{kind}-{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(svg)))[..8]}";
}
