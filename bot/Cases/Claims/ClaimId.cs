using System.Security.Cryptography;

namespace DxAssistant.Cases.Claims;

/// <summary>Names of claims: short enough to be read out, made of letters and digits that look like nothing
/// else.</summary>
public static class ClaimId
{
    private const string Letters = "abcdefghjkmnpqrstuvwxyz23456789";
    private const int Length = 12;

    /// <summary>Makes a new name: some 59 random bits.</summary>
    public static string New() => RandomNumberGenerator.GetString(Letters, Length);

    /// <summary>Whether a text has the form of a claim's name.</summary>
    public static bool IsWellFormed(string text) => text.Length == Length && text.All(Letters.Contains);
}
