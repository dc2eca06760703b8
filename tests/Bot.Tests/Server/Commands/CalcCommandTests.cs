namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class CalcCommandTests
{
    // Source: Lemmon 2003, pseudo-pure equation of R-410A (as in tests/Reference/refrigerants.json): 118 psig is 4.36
    // °C at sea level.
    [Fact]
    public async Task Calc_Superheat_GivesValuesWithUnits()
    {
        var run = await Run.OfAsync("""
            {"id":"ref-tsat-77","inputs":{"refrigerant":{"value":"R410A","unit":""},"p":{"value":914.906,"unit":"kPa_abs"},"curve":{"value":"dew","unit":""}}}
            """, "calc");

        var temperature = run.Json[0].GetProperty("result").GetProperty("T_sat");
        Assert.Equal("ref-tsat-77", run.Json[0].GetProperty("id").GetString());
        Assert.Equal(4.36, temperature.GetProperty("value").GetDouble(), tolerance: 0.01);
        Assert.Equal("degC", temperature.GetProperty("unit").GetString());
    }

    [Theory]
    [InlineData(
        """{"id":"ntc-edge-1","inputs":{"R25":{"value":10000,"unit":"ohm"},"B":{"value":3950,"unit":"K"},"R":{"value":0,"unit":"ohm"}}}""", "invalid-input")]
    [InlineData(
        """{"id":"cap-load-1","inputs":{"I":{"value":4,"unit":"furlongs"},"V":{"value":302,"unit":"V"},"f":{"value":60,"unit":"Hz"}}}""", "invalid-input")]
    [InlineData("""{"id":"cap-load-1","inputs":{"I":{"value":null,"unit":"A"}}}""", "invalid-input")]
    [InlineData("""{"id":"cap-load-1","inputs":{"I":4}}""", "invalid-input")]
    [InlineData(
        """{"id":"cap-load-1","inputs":{"I":{"value":1e999,"unit":"A"},"V":{"value":302,"unit":"V"},"f":{"value":60,"unit":"Hz"}}}""", "invalid-input")]
    [InlineData("""{"id":"no-such-thing-1","inputs":{}}""", "invalid-input")]
    [InlineData(
        """{"id":"ref-edge-1","inputs":{"refrigerant":{"value":"R410A","unit":""},"p":{"value":5000,"unit":"kPa_abs"}}}""", "out-of-range")]
    public async Task Calc_ImpossibleInputs_GivesAStatusAndAMessage(string request, string status)
    {
        var run = await Run.OfAsync(request, "calc");

        Assert.Equal(status, run.Json[0].GetProperty("status").GetString());
        Assert.NotEmpty(run.Json[0].GetProperty("message").GetString()!);
        Assert.Equal(0, run.Code);
    }
}
