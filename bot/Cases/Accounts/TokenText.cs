using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace DxAssistant.Cases.Accounts;

/// <summary>The secret text of a token. Shown once; only its hash is kept.</summary>
/// <remarks>A token has 256 random bits, so a plain hash without salt or stretching gives nothing away.</remarks>
public static class TokenText
{
    private const string Mark = "dxa-";

    /// <summary>Makes a new secret.</summary>
    public static string New() => Mark + Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(32));

    /// <summary>What is kept of a secret: SHA-256, hexadecimal.</summary>
    public static string HashOf(string secret) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));
}
