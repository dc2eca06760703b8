using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace DxAssistant.Cases;

/// <summary>Names of cases: who knows the name may see the case, so it cannot be guessed. Fit for an address line as
/// they are.</summary>
public static class CaseId
{
    /// <summary>The longest name taken, in characters.</summary>
    public const int Longest = 64;

    /// <summary>Makes a new name: 128 random bits in 22 letters, digits, <c>-</c> and <c>_</c>.</summary>
    public static string New() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16));

    /// <summary>The name of the case that belongs to a conversation of an outside channel: always the same
    /// one.</summary>
    public static string Of(string channel, string conversation) =>
        "ch-" + Base64Url.EncodeToString(SHA256.HashData(Encoding.UTF8.GetBytes($"{channel}\n{conversation}")));

    /// <summary>Whether a text has the form of a case name.</summary>
    public static bool IsWellFormed(string text) =>
        text.Length is > 0 and <= Longest && text.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');
}
