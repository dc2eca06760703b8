namespace DxAssistant.Knowledge.Search;

/// <summary>A matcher that is made when it is first asked, for a place where learning takes longer than a person waits. May
/// be asked by many at once: all wait for the one that is being made.</summary>
public sealed class LateMatcher(Func<IMatcher> make) : IMatcher
{
    private readonly Lazy<IMatcher> made = new(make);

    /// <inheritdoc/>
    public MatchResult Match(string text, string? seriesId = null) => made.Value.Match(text, seriesId);
}
