namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// Units that read as they should: the walk ends in watching, with advice, and not after every check there is.
/// </summary>
public sealed class HealthyWalkTests
{
    private const int MostChecks = 22;

    [Theory]
    [InlineData("room-sensor-code")]
    [InlineData("indoor-fan-fault")]
    [InlineData("water-overflow-code")]
    [InlineData("inverter-code")]
    public void Walk_EverythingHealthy_EndsInWatching(string symptom)
    {
        WalkRecord walk = HiddenFault.Typical("none-of-these")
            .Walk(new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "refrigerant", symptom));
        Assert.Equal("watch", walk.End.ClosedHow);
        Assert.InRange(walk.Steps.Length, 2, MostChecks);
        Assert.Equal(0, walk.WrongRepairs);
    }

    [Fact]
    public void Watch_TroubleThatComesAndGoes_IsRemembered()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("room sensor error comes and goes");
        Assert.Contains(walker.State.Symptoms, known => known.ComesAndGoes);
    }
}
