namespace DxAssistant.Knowledge.Readings.Text;

/// <summary>A piece of a message.</summary>
/// <param name="Text">Folded: one kind of dash, of ohm, of micro, of degree.</param>
/// <param name="Lower"><paramref name="Text"/> in lower case.</param>
/// <param name="Glued">No white space before it.</param>
/// <param name="Smudged">A number that hangs on what stands before it, so that it may begin earlier than it
/// seems.</param>
internal sealed record Token(TokenKind Kind, string Text, string Lower, int Start, int Length, bool Glued,
    bool Smudged = false)
{
    public static Token None { get; } = new(TokenKind.Symbol, "", "", 0, 0, false);

    public int End => Start + Length;

    public bool IsWord => Kind == TokenKind.Word;

    public bool IsNumber => Kind == TokenKind.Number;

    public bool Is(char symbol) => Kind == TokenKind.Symbol && Text.Length == 1 && Text[0] == symbol;

    /// <summary>It is one of several symbols.</summary>
    public bool IsOneOf(string symbols) => Kind == TokenKind.Symbol && Text.Length == 1
        && symbols.Contains(Text[0], StringComparison.Ordinal);

    public bool Is(string word) => Kind == TokenKind.Word && Lower == word;

    /// <summary>Digits only, no separator.</summary>
    public bool IsWhole => IsNumber && Text.All(char.IsAsciiDigit);
}
