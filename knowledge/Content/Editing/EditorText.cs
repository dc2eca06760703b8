namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>Something to say about a range.</summary>
/// <param name="Markdown">What to say.</param>
public sealed record EditorText(EditorRange Range, string Markdown);
