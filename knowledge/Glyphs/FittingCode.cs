namespace DxAssistant.Knowledge.Glyphs;

/// <summary>A code of a series that can be what was seen.</summary>
/// <param name="Code">As the series writes it.</param>
public sealed record FittingCode(string Code, GlyphFit Fit);
