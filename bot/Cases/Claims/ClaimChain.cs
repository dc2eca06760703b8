using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace DxAssistant.Cases.Claims;

/// <summary>The chain of hashes over a claim's log: an entry that is changed, taken out or put in breaks it.</summary>
/// <remarks>SHA-256 (FIPS 180-4) over UTF-8 lines: the hash before (empty for the first), claim, number, milliseconds
/// since 1970, who with its length before it, and the event as JSON.</remarks>
internal static class ClaimChain
{
    public static ClaimEntry Seal(string claim, ImmutableArray<ClaimEntry> log, DateTimeOffset at, string by,
        ClaimEvent happened)
    {
        long sequence = log.Length + 1;
        string before = log.IsEmpty ? "" : log[^1].Hash;
        return new ClaimEntry(sequence, at, by, happened, Hash(before, claim, sequence, at, by, happened));
    }

    /// <summary>The number of the first entry that is not as it was written; null when all are.</summary>
    public static long? FirstAltered(string claim, ImmutableArray<ClaimEntry> log)
    {
        string before = "";
        for (int i = 0; i < log.Length; i++)
        {
            var entry = log[i];
            if (entry.Sequence != i + 1 || entry.Hash != Hash(before, claim, i + 1, entry.At, entry.By, entry.Event))
                return i + 1;
            before = entry.Hash;
        }

        return null;
    }

    /// <summary>The hash of a sheet's own content.</summary>
    public static string HashOf(ClaimSheet sheet) => Hex(ClaimJson.Write(new ClaimEvent.Readied(sheet, null)));

    private static string Hash(
        string before, string claim, long sequence, DateTimeOffset at, string by, ClaimEvent happened) =>
        Hex(string.Create(
            CultureInfo.InvariantCulture,
            $"{before}\n{claim}\n{sequence}\n{at.ToUnixTimeMilliseconds()}\n{by.Length} {by}\n{ClaimJson.Write(happened)}"));

    private static string Hex(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
