namespace DxAssistant.Knowledge.Search;

/// <summary>A matcher that is made when it is first asked, for a place where learning takes longer than a person waits.
/// Not for many threads.</summary>
public sealed class LateMatcher(Func<IMatcher> make) : IMatcher
{
    private IMatcher? made;

    /// <inheritdoc/>
    public MatchResult Match(string text, string? seriesId = null) => (made ??= make()).Match(text, seriesId);
}
