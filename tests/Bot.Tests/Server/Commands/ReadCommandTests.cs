namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class ReadCommandTests
{
    [Theory]
    [InlineData("""{"text":"10.2k","asked":"resistance"}""", "resistance", 10_200, "Ω")]
    [InlineData("""{"text":"118 psig"}""", "gauge-pressure", 813_581.36, "Pa")]
    [InlineData("""{"text":"50 °F"}""", "temperature", 10, "°C")]
    public async Task Read_Number_IsGivenInSi(string request, string quantity, double value, string unit)
    {
        var run = await Run.OfAsync(request, "read");

        var reading = run.Json[0].GetProperty("readings")[0];
        Assert.Equal("readings", run.Json[0].GetProperty("result").GetString());
        Assert.Equal(quantity, reading.GetProperty("quantity").GetString());
        Assert.Equal(value, reading.GetProperty("value").GetDouble(), tolerance: 0.01);
        Assert.Equal(unit, reading.GetProperty("unit").GetString());
        Assert.Equal(0, run.Code);
    }

    [Theory]
    [InlineData("""{"text":"OL","asked":"resistance"}""", "open-circuit")]
    [InlineData("""{"text":"dead short","asked":"resistance"}""", "short")]
    [InlineData("""{"text":"hello"}""", "ask-back")]
    [InlineData("""{"text":"5"}""", "ask-back")]
    public async Task Read_NoNumber_SaysWhat(string request, string result) =>
        Assert.Equal(result, (await Run.OfAsync(request, "read")).Json[0].GetProperty("result").GetString());

    [Fact]
    public async Task Read_UnknownQuantity_IsAnErrorOfThatLine()
    {
        var run = await Run.OfAsync("""{"text":"5","asked":"happiness"}""", "read");

        Assert.Equal(1, run.Code);
        Assert.Contains("happiness", run.Json[0].GetProperty("error").GetString(), StringComparison.Ordinal);
    }
}
