using DxAssistant.Knowledge.Serials;

namespace DxAssistant.Knowledge.Tests.Serials;

public class SerialPatternTests
{
    private static readonly SerialPattern Plain = SerialPattern.TryMake("AO[0-9]{8}", "AO24071532")!;
    private static readonly SerialPattern Dashed = SerialPattern.TryMake("OH[0-9]{2}-[A-Z][0-9]{6}", "OH23-K104412")!;

    [Theory]
    [InlineData("AO24071532", "AO24071532")]
    [InlineData(" ao 2407-1532 ", "AO24071532")]
    [InlineData("AO2407153", null)]
    [InlineData("AO240715322", null)]
    [InlineData("A024071532", null)]
    [InlineData("AO24071532\n", "AO24071532")]
    [InlineData("", null)]
    public void Read_Plain_FitsWholeOrNot(string typed, string? read) => Assert.Equal(read, Plain.Read(typed));

    [Theory]
    [InlineData("OH23-K104412", "OH23-K104412")]
    [InlineData("oh23k104412", "OH23-K104412")]
    [InlineData("OH-23K-104412", "OH23-K104412")]
    [InlineData("OH23-1104412", null)]
    public void Read_Dashed_PutsTheDashesWhereThePlateHasThem(string typed, string? read) =>
        Assert.Equal(read, Dashed.Read(typed));

    [Theory]
    [InlineData("AO24O7I532", "AO24071532")]
    [InlineData("A024071S32", "AO24071532")]
    [InlineData("AO2407153X", null)]
    [InlineData("AO2407153", null)]
    [InlineData("BO24071532", null)]
    public void Guess_SignsThatLookAlike_IsWhatWasMeant(string typed, string? meant) =>
        Assert.Equal(meant, Plain.Guess(typed));

    [Fact]
    public void Guess_LetterWhereAnyLetterMayStand_IsTheLikeliestLetter() =>
        Assert.Equal("OH23-S104412", Dashed.Guess("OH23-5104412"));

    [Fact]
    public void TryMake_NoRegularExpression_IsNothing() => Assert.Null(SerialPattern.TryMake("AO[0-9", "AO1"));

    // A pattern must not keep the program busy, whatever an author writes: the engine is one without backtracking.
    [Fact]
    public void Read_PatternThatBacktracks_ComesToAnEnd() =>
        Assert.Null(SerialPattern.TryMake("(A+)+B", "AB")!.Read(new string('A', 5_000)));
}
