namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>Pieces that together may be a code.</summary>
/// <param name="First">Its first token.</param>
/// <param name="End">The token after its last.</param>
/// <param name="Text">The characters, as typed or said.</param>
/// <param name="Plain">It has a letter and a number and no everyday word in it.</param>
/// <param name="Typed">It is one typed token.</param>
internal sealed record CodeRun(int First, int End, string Text, bool Plain, bool Typed)
{
    public bool IsNumber => Text.All(char.IsAsciiDigit);

    public bool IsDashes => Text.All(c => c == '-');
}
