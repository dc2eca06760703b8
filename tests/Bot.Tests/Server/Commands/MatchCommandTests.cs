using System.Text.Json;

namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>Over the shipped pages.</summary>
public sealed class MatchCommandTests
{
    [Theory]
    [InlineData("can I bypass the high pressure switch", "refuse")]
    [InlineData("what is a good recipe for pancakes", "none")]
    public async Task Match_NotForAWalk_SaysSoAndNamesNoFault(string text, string decision)
    {
        var answer = await AnswerAsync(text);

        Assert.Equal(decision, answer.GetProperty("decision").GetString());
        Assert.Equal(0, answer.GetProperty("candidates").GetArrayLength());
    }

    [Fact]
    public async Task Match_Fault_GivesAtMostFiveBestFirst()
    {
        var candidates = (await AnswerAsync("indoor fan motor is dead")).GetProperty("candidates").EnumerateArray()
            .ToList();

        Assert.Equal("indoor-fan-motor-failed", candidates[0].GetProperty("fault").GetString());
        Assert.InRange(candidates.Count, 1, 5);
        Assert.Equal(candidates.Select(Score).OrderDescending(), candidates.Select(Score));
    }

    [Fact]
    public async Task Match_CodeAndReadings_GivesBoth()
    {
        var answer = await AnswerAsync("display shows E5, room sensor 2.1 kohm at 24 °C");

        Assert.Contains("E5", answer.GetProperty("codes").EnumerateArray().Select(c => c.GetString()));
        Assert.Equal(2, answer.GetProperty("readings").GetArrayLength());
    }

    [Fact]
    public async Task Match_OneQuestionTellsMost_GivesItWithWhereEachAnswerLeads()
    {
        var answer = await AnswerAsync("its making a noise");

        Assert.Equal("clarify", answer.GetProperty("decision").GetString());
        var ways = answer.GetProperty("question").GetProperty("answers").EnumerateArray().ToList();
        Assert.True(ways.Count > 1);
        Assert.All(ways, way => Assert.NotEqual(0, way.GetProperty("symptoms").GetArrayLength()));
    }

    private static double Score(JsonElement candidate) => candidate.GetProperty("score").GetDouble();

    private static async Task<JsonElement> AnswerAsync(string text) =>
        (await Run.OfAsync(JsonSerializer.Serialize(new { text }), "match", "--content", Shipped.Folder)).Json[0];
}
