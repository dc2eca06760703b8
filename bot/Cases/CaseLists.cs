using System.Collections.Immutable;

namespace DxAssistant.Cases;

/// <summary>Reads the list of cases from the front.</summary>
public static class CaseLists
{
    /// <summary>The cases last added to, newest first; those in which nothing was said yet are left out.</summary>
    /// <param name="limit">How many at most; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is below 1.</exception>
    /// <exception cref="CaseFileException">The cases cannot be read.</exception>
    public static async Task<ImmutableArray<CaseLine>> ListAsync(
        this ICaseStore store, int limit, CancellationToken cancel = default) =>
        (await store.PageAsync(new CaseQuery(limit), cancel)).Cases;
}
