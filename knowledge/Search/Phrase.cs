namespace DxAssistant.Knowledge.Search;

/// <summary>One wording of one entry, analyzed.</summary>
/// <param name="Page">Place of the entry in the index.</param>
internal sealed record Phrase(int Page, string Text, TermBag Bag);
