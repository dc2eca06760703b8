namespace DxAssistant.Bot.Tests.Server;

/// <summary>A clock on which time passes only when it is told to.</summary>
internal sealed class StillClock : TimeProvider
{
    private long at;

    public override long GetTimestamp() => Interlocked.Read(ref at);

    public void Pass(TimeSpan time) => Interlocked.Add(ref at, (long)(time.TotalSeconds * TimestampFrequency));
}
