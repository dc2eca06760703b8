namespace DxAssistant.Cases.Log;

/// <summary>A person's words, kept beside the event they belong to.</summary>
/// <param name="At">Where in the event they stand (JSON Pointer, RFC 6901).</param>
/// <param name="Salt">16 random bytes, base 64; null once the words are blanked.</param>
/// <param name="Value">The words; null once they are blanked.</param>
internal sealed record AsideWords(string At, string? Salt = null, string? Value = null);
