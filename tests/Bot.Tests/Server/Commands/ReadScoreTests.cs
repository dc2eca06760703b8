using DxAssistant.Server.Commands.Scoring;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class ReadScoreTests
{
    [Theory]
    [InlineData("""{"text":"46 ohms","expect":[{"quantity":"resistance","value":46}]}""", nameof(Mark.Right))]
    [InlineData("""{"text":"46 ohms","expect":[{"quantity":"resistance","value":47}]}""", nameof(Mark.Wrong))]
    [InlineData("""{"text":"46 ohms","expect":"ask-back"}""", nameof(Mark.Wrong))]
    [InlineData("""{"text":"46","expect":[{"quantity":"resistance","value":46}]}""", nameof(Mark.AskedBack))]
    [InlineData("""{"text":"46","expect":"ask-back"}""", nameof(Mark.Right))]
    [InlineData("""{"text":"OL","asked":"resistance","expect":"open-circuit"}""", nameof(Mark.Right))]
    [InlineData("""{"text":"OL","asked":"resistance","expect":"short"}""", nameof(Mark.Wrong))]
    [InlineData("""{"text":"46 ohms and 24 C","expect":[{"quantity":"resistance","value":46}]}""", nameof(Mark.Wrong))]
    [InlineData("""{"text":"46 ohms","expect":"ask-back","accept":[[{"quantity":"resistance","value":46}]]}""",
        nameof(Mark.Right))]
    public void Score_OneLine_IsMarked(string line, string mark) =>
        Assert.Equal(mark, Assert.Single(ScoreFile.Score([line], ReadingMarker.Mark).Lines).Marked.Mark.ToString());

    // Nothing wrong is taken for right, and no more than one in a hundred is asked without need.
    [Fact]
    public void Score_WrittenSet_HasNothingConfidentlyWrong()
    {
        var file = Repository.PathOf("tests", "Reference", "evaluation", "readings.jsonl");
        var sheet = ScoreFile.Score(File.ReadLines(file), ReadingMarker.Mark);
        Assert.True(sheet.Lines.Length >= 300);
        Assert.True(sheet.Of(Mark.Wrong) == 0, sheet.Text());
        Assert.True(sheet.Of(Mark.Right) >= 0.97 * sheet.Lines.Length, sheet.Text());
    }

    [Fact]
    public async Task Read_ScoreOfSeveralFiles_GivesEachItsSheet()
    {
        var folder = Directory.CreateTempSubdirectory();
        string[] files = [Path.Combine(folder.FullName, "first.jsonl"), Path.Combine(folder.FullName, "second.jsonl")];
        foreach (string file in files) await File.WriteAllLinesAsync(file, ["""{"text":"46","expect":"ask-back"}"""]);
        var run = await Run.OfAsync("", ["read", "--score", .. files, "--figures"]);
        Assert.StartsWith("first:\n1 lines:", run.Output, StringComparison.Ordinal);
        Assert.Contains("\nsecond:\n1 lines:", run.Output, StringComparison.Ordinal);
        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task Read_ScoreOfABadFile_SaysWhichLine()
    {
        var file = Path.GetTempFileName();
        await File.WriteAllLinesAsync(file, ["""{"text":"46 ohms","expect":"ask-back"}""", """{"text":1}"""]);
        var run = await Run.OfAsync("", "read", "--score", file);
        Assert.Equal(2, run.Code);
        Assert.Contains(":2:", run.Error, StringComparison.Ordinal);
        File.Delete(file);
    }
}
