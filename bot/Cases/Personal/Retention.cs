using System.Collections.Immutable;

namespace DxAssistant.Cases.Personal;

/// <summary>
/// Removes people's own words from cases that nothing was added to for so long, and from calls as old.
/// </summary>
/// <param name="kept">How long words are kept.</param>
public sealed class Retention(ICaseStore cases, DeskBooks books, TimeSpan kept, TimeProvider clock)
{
    private const int AtOnce = 100;

    /// <summary>Removes what is old enough now.</summary>
    /// <returns>From how many cases.</returns>
    /// <exception cref="CaseFileException">Some words could not be removed; all others were.</exception>
    public async Task<int> SweepAsync(CancellationToken cancel = default)
    {
        var before = clock.GetUtcNow() - kept;
        await books.Calls.BlankAsync(before, cancel);
        int swept = 0;
        var stuck = new SortedSet<string>(StringComparer.Ordinal);
        while (await NextAsync(before, stuck, cancel) is { IsEmpty: false } old)
            foreach (string name in old)
                if (await IsBlankedAsync(name, cancel)) swept++;
                else stuck.Add(name);
        return stuck.Count == 0 ? swept : throw new CaseFileException(
            FormattableString.Invariant(
                $"the words of {stuck.Count} cases could not be removed, the first of them {stuck.Min}: cases verify says why"));
    }

    private async Task<ImmutableArray<string>> NextAsync(DateTimeOffset before, SortedSet<string> stuck,
        CancellationToken cancel) =>
        [.. (await cases.LeftAloneAsync(before, AtOnce + stuck.Count, cancel)).Where(name => !stuck.Contains(name))];

    // A case that was altered is no reason to keep the words of all others.
    private async Task<bool> IsBlankedAsync(string name, CancellationToken cancel)
    {
        try
        {
            await cases.BlankAsync(name, cancel);
            return true;
        }
        catch (CaseFileException)
        {
            return false;
        }
    }
}
