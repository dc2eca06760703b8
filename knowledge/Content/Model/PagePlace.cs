using DxAssistant.Knowledge.Content.Languages;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>Where a passage stands: a page and the heading above it.</summary>
/// <param name="Path">Relative to the content folder, with forward slashes.</param>
/// <param name="Heading">The nearest heading, without its number signs; the title of the page at its top.</param>
public sealed record PagePlace(string Path, string Heading)
{
    /// <summary>The language of the page when it is not the main one.</summary>
    public string? Language => LanguageOfPath.Of(Path);
}
