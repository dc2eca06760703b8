namespace DxAssistant.Knowledge.Search;

/// <summary>Finds what a message means in one language.</summary>
public interface IMatcher
{
    /// <summary>What was made of a message.</summary>
    MatchResult Match(string text, string? seriesId = null);
}
