namespace DxAssistant.Knowledge.Glyphs;

/// <summary>The lit segments of one digit, named as data sheets name them: a on top, then clockwise, g in the
/// middle.</summary>
[Flags]
public enum Segments
{
    None = 0,
    /// <summary>Top.</summary>
    A = 1,
    /// <summary>Upper right.</summary>
    B = 2,
    /// <summary>Lower right.</summary>
    C = 4,
    /// <summary>Bottom.</summary>
    D = 8,
    /// <summary>Lower left.</summary>
    E = 16,
    /// <summary>Upper left.</summary>
    F = 32,
    /// <summary>Middle.</summary>
    G = 64,
    All = A | B | C | D | E | F | G,
}
