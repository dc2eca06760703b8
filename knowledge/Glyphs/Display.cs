using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Glyphs;

/// <summary>A display of several digits with the segments that each lights, left to right.</summary>
public sealed record Display(ImmutableArray<Segments> Digits)
{
    /// <summary>The display that shows a code; a character without an agreed shape stays dark.</summary>
    public static Display Showing(string code) =>
        new([.. code.Select(character => SegmentTable.TryGet(character, out Segments lit) ? lit : Segments.None)]);

    public bool Equals(Display? other) => other is not null && Digits.SequenceEqual(other.Digits);

    public override int GetHashCode() => Digits.Aggregate(0, (hash, lit) => hash * 131 + (int)lit);

    /// <summary>The digits as letters, parted by spaces: <c>adefg acdfg</c>.</summary>
    public override string ToString() => string.Join(' ', Digits.Select(lit => lit.ToLetters()));
}
