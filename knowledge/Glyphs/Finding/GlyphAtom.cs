namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>One said or typed piece of a code.</summary>
/// <param name="Text">The characters it stands for.</param>
/// <param name="End">The token after its last.</param>
/// <param name="Plain">It is no everyday word, so that it needs no word like "code" beside it.</param>
internal sealed record GlyphAtom(string Text, int End, GlyphAtomKind Kind, bool Plain);
