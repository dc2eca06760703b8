namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A piece of text that can be shown, and where it stands.</summary>
/// <param name="Text">Plain text: the Markdown marks are gone.</param>
public sealed record Passage(string Text, PagePlace Place);
