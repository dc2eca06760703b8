namespace DxAssistant.Cases.Log;

/// <summary>An event written down: what is hashed, and beside it the words that may be blanked.</summary>
/// <param name="Body">JSON in its one form.</param>
/// <param name="Aside">JSON; null when the event holds nobody's words.</param>
internal readonly record struct EntryText(string Body, string? Aside);
