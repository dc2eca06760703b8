using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace DxAssistant.Server.Desk;

/// <summary>Signs news: HMAC-SHA256 (RFC 2104, FIPS 180-4) over the time in seconds since 1970, a full stop, and the
/// body.</summary>
/// <remarks>The time is signed too, so that news caught on its way cannot be played again later.</remarks>
internal static class NewsSignature
{
    public const string TimeHeader = "Dx-Time";
    public const string Header = "Dx-Signature";

    public static string Of(string secret, DateTimeOffset at, string body) => Convert.ToHexStringLower(
        HMACSHA256.HashData(Encoding.UTF8.GetBytes(secret), Encoding.UTF8.GetBytes($"{Time(at)}.{body}")));

    public static string Time(DateTimeOffset at) => at.ToUnixTimeSeconds().ToString(CultureInfo.InvariantCulture);
}
