using DxAssistant.Server.Commands.Scoring;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class GlyphScoreTests
{
    [Theory]
    [InlineData("""{"text":"e five","canonical":"E5"}""", nameof(Mark.Right))]
    [InlineData("""{"text":"e five","canonical":"E6"}""", nameof(Mark.AskedBack))]
    [InlineData("""{"text":"e five","canonical":"P1"}""", nameof(Mark.Wrong))]
    [InlineData("""{"text":"e five flashing","canonical":"E5","flashing":false}""", nameof(Mark.Wrong))]
    [InlineData("""{"text":"green 3 red 1","canonical":"","lamps":{"green":3,"red":1}}""", nameof(Mark.Right))]
    [InlineData("""{"text":"green 3 red 1","canonical":"","lamps":{"green":3,"red":2}}""", nameof(Mark.Wrong))]
    public void Score_OneLine_IsMarked(string line, string mark) =>
        Assert.Equal(mark, Assert.Single(ScoreFile.Score([line], GlyphMarker.Mark).Lines).Marked.Mark.ToString());

    [Theory]
    [InlineData("glyphs.jsonl", 450, 0.01)]
    [InlineData("glyphs-judge.jsonl", 60, 0.02)]
    public void Score_WrittenSet_StaysAboveTheFloor(string set, int lines, double mostWrong)
    {
        var file = Repository.PathOf("tests", "Reference", "evaluation", set);
        var sheet = ScoreFile.Score(File.ReadLines(file), GlyphMarker.Mark);
        Assert.True(sheet.Lines.Length >= lines);
        Assert.True(sheet.Of(Mark.Wrong) <= mostWrong * sheet.Lines.Length, sheet.Text());
    }
}
