namespace DxAssistant.Knowledge.Glyphs.Spelling;

/// <summary>One or more characters of a code as they were said.</summary>
/// <param name="End">The word after it.</param>
/// <param name="Sure">It can hardly be an everyday word.</param>
internal sealed record SpelledPiece(string Text, int End, bool Sure);
