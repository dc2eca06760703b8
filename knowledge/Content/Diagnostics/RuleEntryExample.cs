namespace DxAssistant.Knowledge.Content;

/// <summary>A piece of a page that breaks a rule, and the same put right.</summary>
/// <param name="Path">The page.</param>
/// <param name="Bad">
/// The piece; what is marked stands between <c>⟦</c> and <c>⟧</c>. Empty when the mistake is that there
/// is no such page.
/// </param>
/// <param name="Good">The piece put right.</param>
public sealed record RuleEntryExample(string Path, string Bad, string Good);
