using System.Collections.Immutable;

namespace DxAssistant.Cases.Claims;

/// <summary>The append-only logs of all claims, and the news of them that is not told yet. Safe to use from many
/// threads.</summary>
public interface IClaimStore : IAsyncDisposable
{
    /// <summary>Appends an entry, with the news of it, or nothing. On disk once it returns true.</summary>
    /// <param name="after">The claim as the entry leaves it.</param>
    /// <param name="news">What waits to be told of it, as JSON; null when nothing does.</param>
    /// <returns>False when an entry of that number is there already.</returns>
    /// <exception cref="CaseFileException">It could not be saved.</exception>
    Task<bool> AppendAsync(Claim after, string? news, CancellationToken cancel = default);

    /// <summary>The log of a claim; empty when there is no such claim. Not checked.</summary>
    /// <exception cref="CaseFileException">An entry cannot be read.</exception>
    Task<ImmutableArray<ClaimEntry>> ReadAsync(string claim, CancellationToken cancel = default);

    /// <summary>Claims, last changed first.</summary>
    /// <param name="state">Only those in this state; null for all.</param>
    /// <param name="ofCase">Only those of this case; null for all.</param>
    /// <param name="after">Only those behind this place; null for the front.</param>
    Task<ImmutableArray<ClaimHead>> ListAsync(
        ClaimState? state = null, string? ofCase = null, int limit = 1000, ClaimPlace? after = null,
        CancellationToken cancel = default);

    /// <summary>News whose time has come, oldest first.</summary>
    Task<ImmutableArray<ClaimNotice>> DueAsync(DateTimeOffset now, int limit, CancellationToken cancel = default);

    /// <summary>News was told: it waits no more.</summary>
    Task ToldAsync(ClaimNotice notice, CancellationToken cancel = default);

    /// <summary>News could not be told: it waits until then.</summary>
    Task PutOffAsync(ClaimNotice notice, DateTimeOffset until, CancellationToken cancel = default);
}
