using System.Collections.Immutable;
using CsCheck;
using DxAssistant.Knowledge.Glyphs;

namespace DxAssistant.Knowledge.Tests.Glyphs;

public sealed class LookAlikeTests
{
    // Source: same shapes on the encyclopedic pages behind the segment table (0/O/D, 5/S, 8/B, 2/Z, 9/g, U/V, 6 without
    // a = b).
    [Theory]
    [InlineData("ES", "E5")]
    [InlineData("EO", "E0")]
    [InlineData("E0", "ED")]
    [InlineData("E8", "EB")]
    [InlineData("EZ", "E2")]
    [InlineData("E9", "Eg")]
    [InlineData("E6", "Eb")]
    [InlineData("5U", "SV")]
    [InlineData("6A", "bA")]
    [InlineData("b4", "B4")]
    [InlineData("L1", "l1")]
    public void Same_CodesOfOneLook_AreTheSame(string one, string other)
    {
        Assert.True(GlyphShapes.Same(one, other));
        Assert.True(GlyphShapes.Same(other, one));
    }

    // Source: one segment apart on the same pages: 6/b by a, 0/8, 8/9, 5/6, 8/A, 6/G, 3/9, P/F, E/F, 1/7, 0/U, C/G,
    // 4/y, b/t.
    [Theory]
    [InlineData("E0", "E8")]
    [InlineData("E8", "E9")]
    [InlineData("E5", "E6")]
    [InlineData("8E", "AE")]
    [InlineData("3E", "9E")]
    [InlineData("P1", "F1")]
    [InlineData("E1", "F1")]
    [InlineData("E1", "E7")]
    [InlineData("0E", "UE")]
    [InlineData("C5", "G5")]
    [InlineData("4E", "yE")]
    public void OneSegmentApart_Neighbors_AreOneApart(string one, string other) =>
        Assert.True(GlyphShapes.OneSegmentApart(one, other));

    [Theory]
    [InlineData("E5", "E05")]
    [InlineData("", "")]
    [InlineData("E", "")]
    [InlineData("K1", "E1")]
    public void Same_OtherLengthOrNoShape_AreNot(string one, string other) =>
        Assert.False(GlyphShapes.Same(one, other));

    [Fact]
    public void Alternatives_OfE5_AreItsNeighborsInOrdinalOrder() =>
        Assert.Equal(["65", "C5", "E6", "E9", "EG", "F5"], GlyphReader.Read("E5").Alternatives.Take(6));

    [Fact]
    public void Alternatives_SameLook_ComeBeforeNeighbors()
    {
        ImmutableArray<string> alternatives = GlyphReader.Read("b4").Alternatives;
        Assert.Equal(["64", "84"], alternatives.Take(2));
        Assert.Contains("A4", alternatives);
    }

    [Fact]
    public void Alternatives_OfDashes_AreNone() => Assert.Empty(GlyphReader.Read("--").Alternatives);

    [Fact]
    public void Resolve_SeriesCodes_GivesTheBestFitFirst()
    {
        ImmutableArray<FittingCode> fitting = GlyphReader.Resolve(GlyphReader.Read("ES"),
            ["F5", "E5", "H6", "E6", "b4", "8S"]);
        Assert.Equal([new("E5", GlyphFit.Exact), new("E6", GlyphFit.OneSegment), new("F5", GlyphFit.OneSegment),
            new("8S", GlyphFit.BrokenDigit)], fitting.ToArray());
    }

    [Fact]
    public void Resolve_SameLookInAnotherSpelling_Fits() =>
        Assert.Equal([new FittingCode("5U", GlyphFit.SameShape)],
            GlyphReader.Resolve(GlyphReader.Read("SU"), ["5U", "H0"]).ToArray());

    [Fact]
    public void Resolve_LeadingZero_IsTheSameNumber() =>
        Assert.Equal([new FittingCode("E05", GlyphFit.SameShape)],
            GlyphReader.Resolve(GlyphReader.Read("E5"), ["E05", "E15"]).ToArray());

    [Fact]
    public void Resolve_TwoDarkSegmentsOfOneDigit_IsABrokenDigit() =>
        // C lights adef, 8 lights all: b, c and g missing are three. U lights bcdef, 8 adds a and g: two.
        Assert.Equal([new FittingCode("8E", GlyphFit.BrokenDigit)],
            GlyphReader.Resolve(GlyphReader.Read("UE"), ["8E"]).ToArray());

    [Fact]
    public void TryFind_AnyText_NeverThrowsAndNeverListsTheCodeItself()
    {
        string[] pieces =
            ["e", "five", "E5", "-", "--", "dash", "capital", "little", "letter", "number", "double", "echo", "oh", "o",
                "88", "all", "segments", "blinks", "times", "3", "green", "red", "code", "shows", "flashing", "not",
                "a", "I", "'", "\"", ".", "/", "😀", "\u0000", "R32", "L1"];
        Gen<string> text = Gen.OneOf(Gen.String,
            Gen.OneOf(pieces).Array[0, 12].Select(words => string.Join(' ', words)),
            Gen.OneOf(pieces).Array[0, 12].Select(string.Concat));
        text.Sample(message =>
        {
            GlyphReading reading = GlyphReader.Read(message);
            return !reading.Alternatives.Contains(reading.Canonical)
                && reading.Alternatives.Distinct().Count() == reading.Alternatives.Length
                && reading.Alternatives.All(other => GlyphShapes.Distance(other, reading.Canonical) is <= 1);
        }, iter: 5_000);
    }

    [Fact]
    public void Read_ItsOwnCanonicalForm_GivesItBack()
    {
        Gen<string> code = Gen.Select(Gen.Char["bCdEFGHJLPU"], Gen.Int[0, 99], (letter, number) => letter
            + number.ToString(System.Globalization.CultureInfo.InvariantCulture));
        code.Sample(typed =>
        {
            string canonical = GlyphReader.Read(typed).Canonical;
            return GlyphReader.Read(canonical).Canonical == canonical && GlyphShapes.Same(canonical, typed);
        });
    }

    [Fact]
    public void Display_Showing_LightsTheTableSegments() =>
        Assert.Equal("adefg acdfg", Display.Showing("E5").ToString());
}
