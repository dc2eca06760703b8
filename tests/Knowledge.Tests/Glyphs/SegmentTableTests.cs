using DxAssistant.Knowledge.Glyphs;

namespace DxAssistant.Knowledge.Tests.Glyphs;

public sealed class SegmentTableTests
{
    // Source: segment table for letters and digits on encyclopedic pages (WikiChip, Wikipedia mirrors); not
    // standardized.
    [Theory]
    [InlineData('0', "abcdef")]
    [InlineData('1', "bc")]
    [InlineData('2', "abdeg")]
    [InlineData('3', "abcdg")]
    [InlineData('4', "bcfg")]
    [InlineData('5', "acdfg")]
    [InlineData('6', "acdefg")]
    [InlineData('7', "abc")]
    [InlineData('8', "abcdefg")]
    [InlineData('9', "abcdfg")]
    [InlineData('A', "abcefg")]
    [InlineData('b', "cdefg")]
    [InlineData('C', "adef")]
    [InlineData('d', "bcdeg")]
    [InlineData('E', "adefg")]
    [InlineData('F', "aefg")]
    [InlineData('G', "acdef")]
    [InlineData('H', "bcefg")]
    [InlineData('I', "ef")]
    [InlineData('J', "bcde")]
    [InlineData('L', "def")]
    [InlineData('n', "ceg")]
    [InlineData('o', "cdeg")]
    [InlineData('P', "abefg")]
    [InlineData('q', "abcfg")]
    [InlineData('r', "eg")]
    [InlineData('S', "acdfg")]
    [InlineData('t', "defg")]
    [InlineData('U', "bcdef")]
    [InlineData('u', "cde")]
    [InlineData('y', "bcdfg")]
    public void TryGet_TableCharacter_LightsItsSegments(char character, string lit)
    {
        Assert.True(SegmentTable.TryGet(character, out Segments segments));
        Assert.Equal(lit, segments.ToLetters());
    }

    // Source: set differences of the table above.
    [Theory]
    [InlineData('5', 'S', "")]
    [InlineData('6', 'b', "a")]
    [InlineData('0', '8', "g")]
    [InlineData('8', '9', "e")]
    [InlineData('9', 'q', "d")]
    [InlineData('5', '6', "e")]
    [InlineData('1', '7', "a")]
    [InlineData('U', '0', "a")]
    [InlineData('C', 'G', "c")]
    public void Differing_TwoCharacters_NamesTheSegments(char one, char other, string segments)
    {
        Assert.True(SegmentTable.TryGet(one, out Segments left) & SegmentTable.TryGet(other, out Segments right));
        Assert.Equal(segments, left.Differing(right).ToLetters());
        Assert.Equal(segments.Length, left.DistanceTo(right));
    }

    // Source: the same pages (D as 0, B as 8, S as 5); O as 0, Z as 2, 9 as g, U as V from memory.
    [Theory]
    [InlineData('0', 'D')]
    [InlineData('0', 'O')]
    [InlineData('5', 'S')]
    [InlineData('8', 'B')]
    [InlineData('2', 'Z')]
    [InlineData('9', 'g')]
    [InlineData('U', 'V')]
    public void SameShape_LookAlikes_AreTheSame(char one, char other) =>
        Assert.True(SegmentTable.SameShape(one, other));

    // Source: variants of the same pages: 6 without a, 9 without d, 1 on the left.
    [Theory]
    [InlineData('6', 'b')]
    [InlineData('9', 'q')]
    [InlineData('1', 'I')]
    public void NearestDistance_VariantShape_IsZero(char one, char other) =>
        Assert.Equal(0, SegmentTable.NearestDistance(one, other));

    [Theory]
    [InlineData('K')]
    [InlineData('M')]
    [InlineData('W')]
    [InlineData('X')]
    public void ShapesOf_CharacterWithoutAgreedShape_IsEmpty(char character) =>
        Assert.Empty(SegmentTable.ShapesOf(character));

    [Fact]
    public void FromLetters_NotASegment_Throws() =>
        Assert.Throws<ArgumentException>(() => SegmentsText.FromLetters("abx"));
}
