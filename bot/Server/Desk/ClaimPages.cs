using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Cases.Claims;
using DxAssistant.Server.Accounts;

namespace DxAssistant.Server.Desk;

/// <summary>The list of claims as far as a person may see it.</summary>
internal sealed class ClaimPages(IClaimStore claims, CaseGrants grants)
{
    private const int ReadAtOnce = 1000;

    /// <summary>Reads on from a place until there are enough that the person may see.</summary>
    /// <param name="state">Only claims in this state; anything else for all.</param>
    public async Task<ImmutableArray<ClaimHead>> ReadAsync(string? state, int most, ClaimPlace? after, HttpContext http,
        CancellationToken cancel)
    {
        var seen = grants.Seen(Clerks.PersonOf(http));
        ClaimState? only = Enum.TryParse<ClaimState>(state, ignoreCase: true, out var named) ? named : null;
        var found = ImmutableArray.CreateBuilder<ClaimHead>();
        while (true)
        {
            var read = await claims.ListAsync(only, null, ReadAtOnce, after, cancel);
            found.AddRange(read.Where(head => seen(head.Case)));
            if (found.Count >= most || read.Length < ReadAtOnce) return [.. found.Take(most)];
            after = new ClaimPlace(read[^1].At, read[^1].Id);
        }
    }

    /// <summary>The place behind a claim, for an address.</summary>
    public static string Write(ClaimHead last) =>
        string.Create(CultureInfo.InvariantCulture, $"{last.At.ToUnixTimeMilliseconds()}-{last.Id}");

    /// <summary>Reads a place; none is read from nothing.</summary>
    public static bool TryRead(string? text, out ClaimPlace? place)
    {
        place = null;
        if (string.IsNullOrEmpty(text)) return true;
        int dash = text.IndexOf('-', StringComparison.Ordinal);
        if (dash <= 0 || !long.TryParse(text[..dash], NumberStyles.None, CultureInfo.InvariantCulture, out long at)
            || at > DateTimeOffset.MaxValue.ToUnixTimeMilliseconds())
            return false;
        place = new ClaimPlace(DateTimeOffset.FromUnixTimeMilliseconds(at), text[(dash + 1)..]);
        return true;
    }
}
