namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A piece of a page that shows a rule.</summary>
/// <param name="Path">The page.</param>
/// <param name="Marked">
/// A front matter, a title or sections that take the place of those of the page, or add to it. What a rule marks stands
/// between <c>⟦</c> and <c>⟧</c>.
/// </param>
internal sealed record RuleExample(string Path, string Marked)
{
    /// <summary>The piece without marks.</summary>
    public string Text => Marked
        .Replace("⟦", "", StringComparison.Ordinal).Replace("⟧", "", StringComparison.Ordinal);
}
