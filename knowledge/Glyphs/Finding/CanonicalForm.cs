namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>One way to write all codes that a display shows alike.</summary>
internal static class CanonicalForm
{
    /// <summary>Upper case, no marks, digits behind the first place wherever a letter looks like one.</summary>
    /// <remarks>B and D stay: in upper case they stand for the b and d that displays show as often.</remarks>
    public static string Of(string code)
    {
        string plain = GlyphShapes.Plain(code);
        return plain.Length == 0 ? plain : plain[0] is 'l' ? "L" + Rest(plain) : char.ToUpperInvariant(plain[0])
            + Rest(plain);
    }

    private static string Rest(string plain) => new([.. plain.Skip(1).Select(Digit)]);

    private static char Digit(char typed) => typed switch
    {
        'O' or 'o' => '0',
        'S' or 's' => '5',
        'Z' or 'z' => '2',
        'I' or 'i' or 'l' => '1',
        'g' or 'q' => '9',
        _ => char.ToUpperInvariant(typed),
    };
}
