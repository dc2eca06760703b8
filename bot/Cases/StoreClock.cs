namespace DxAssistant.Cases;

/// <summary>The time as a store keeps it.</summary>
internal static class StoreClock
{
    /// <summary>Now, UTC, cut to whole milliseconds, so that it reads back the same from any store.</summary>
    public static DateTimeOffset Now(TimeProvider clock) =>
        DateTimeOffset.FromUnixTimeMilliseconds(clock.GetUtcNow().ToUnixTimeMilliseconds());
}
