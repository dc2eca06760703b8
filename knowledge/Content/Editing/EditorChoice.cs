namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>Something that can be written at a place.</summary>
/// <param name="Text">What is written.</param>
/// <param name="About">What it is, in a few words; empty when the text says it.</param>
/// <param name="Replaces">What it takes the place of.</param>
public sealed record EditorChoice(string Text, string About, EditorRange Replaces);
