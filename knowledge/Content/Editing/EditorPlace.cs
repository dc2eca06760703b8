namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>A range of a page.</summary>
public sealed record EditorPlace(string Path, EditorRange Range);
