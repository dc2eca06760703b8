using System.Collections.Immutable;

namespace DxAssistant.Cases;

/// <summary>A page of the list of cases.</summary>
/// <param name="Next">
/// Where the next page begins; null when this is the last one. A case that is added to meanwhile moves to
/// the front and is missed by later pages, never shown twice.
/// </param>
public sealed record CasePage(ImmutableArray<CaseLine> Cases, long? Next)
{
    /// <summary>Cuts what was read, one line more than wanted, to a page.</summary>
    internal static CasePage Of(ImmutableArray<(CaseLine Line, long Place)> read, int limit) => new(
        [.. read.Take(limit).Select(one => one.Line)], read.Length > limit ? read[limit - 1].Place : null);
}
