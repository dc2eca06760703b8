namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>What a piece of a code is.</summary>
internal enum GlyphAtomKind
{
    Letter,
    Digits,
    Dash,

    /// <summary>A whole code in one token: E5, ES, dF.</summary>
    Typed,
}
