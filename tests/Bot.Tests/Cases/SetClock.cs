namespace DxAssistant.Bot.Tests.Cases;

/// <summary>A clock that stands where a test puts it.</summary>
internal sealed class SetClock(DateTimeOffset time) : TimeProvider
{
    public DateTimeOffset Time { get; set; } = time;

    public override DateTimeOffset GetUtcNow() => Time;
}
