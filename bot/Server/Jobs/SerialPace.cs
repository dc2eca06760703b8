namespace DxAssistant.Server.Jobs;

/// <summary>
/// How many serial numbers one person may look up in cases of others. Whoever works meets no bound; whoever tries
/// numbers does.
/// </summary>
internal sealed class SerialPace(TimeProvider clock)
{
    /// <summary>So many different numbers a day.</summary>
    public const int Most = 30;

    private static readonly TimeSpan Day = TimeSpan.FromDays(1);

    private readonly Lock gate = new();
    private readonly List<(string Who, string Serial, DateTimeOffset At)> looked = [];

    /// <summary>Counts a look-up.</summary>
    /// <returns>False when it is one too many. The same number again counts once.</returns>
    public bool May(string who, string serial)
    {
        lock (gate)
        {
            var now = clock.GetUtcNow();
            looked.RemoveAll(one => one.At + Day <= now);
            if (looked.Any(one => one.Who == who && one.Serial == serial)) return true;
            if (looked.Count(one => one.Who == who) >= Most) return false;
            looked.Add((who, serial, now));
            return true;
        }
    }
}
