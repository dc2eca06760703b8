using System.Globalization;
using System.Text.RegularExpressions;

namespace DxAssistant.Cases.Claims;

/// <summary>The line at the foot of a sheet that ties it to the logs.</summary>
/// <param name="Through">The last entry of the case the sheet was built from.</param>
/// <param name="Log">The beginning of the hash of the case's log up to there.</param>
/// <param name="Sheet">The beginning of the hash of the sheet's own content.</param>
public sealed partial record VerifyLine(string Claim, long Through, string Log, string Sheet)
{
    // 80 bits: too many to find a second sheet that fits, few enough to type.
    private const int Digits = 20;
    private const int Group = 5;

    public static VerifyLine Of(string claim, ClaimSheet sheet) =>
        new(claim, sheet.Through, sheet.LogHash[..Digits], ClaimChain.HashOf(sheet)[..Digits]);

    /// <summary>Finds the first such line in a text; null when there is none.</summary>
    public static VerifyLine? Find(string text)
    {
        var found = Pattern().Match(text);
        return found.Success && long.TryParse(found.Groups[2].Value, CultureInfo.InvariantCulture, out long through)
            ? new VerifyLine(found.Groups[1].Value, through, Joined(found.Groups[3].Value),
                Joined(found.Groups[4].Value))
            : null;
    }

    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture,
            $"claim {Claim} entry {Through} log {Grouped(Log)} sheet {Grouped(Sheet)}");

    private static string Grouped(string hash) => string.Join('-', hash.Chunk(Group).Select(part => new string(part)));

    private static string Joined(string hash) => hash.Replace("-", "", StringComparison.Ordinal).ToLowerInvariant();

    // Who types it from paper may leave out the dashes and write capitals.
    [GeneratedRegex(
        @"claim\s+([a-z2-9]{12})\s+entry\s+(\d+)\s+log\s+((?:[0-9a-f]-?){19}[0-9a-f])\s+sheet\s+((?:[0-9a-f]-?){19}[0-9a-f])\b",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Pattern();
}
