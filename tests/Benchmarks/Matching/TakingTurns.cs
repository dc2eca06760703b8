namespace DxAssistant.Benchmarks.Matching;

/// <summary>
/// Two pieces of work by turns, and what processor time the one takes against the other. Other work on the machine
/// slows both alike, so the ratio holds where the clock does not.
/// </summary>
internal static class TakingTurns
{
    private const int WarmUp = 20, Rounds = 61;
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20);

    /// <summary>The median of the ratios of all rounds.</summary>
    public static double Ratio(Action ours, Action plain)
    {
        var ratios = new List<double>();
        var start = Environment.CpuUsage.TotalTime;
        for (var round = 0; round < WarmUp + Rounds
            && (ratios.Count == 0 || Environment.CpuUsage.TotalTime - start < Longest); round++)
        {
            var ratio = TimeOf(ours) / TimeOf(plain);
            if (round >= WarmUp || Environment.CpuUsage.TotalTime - start > Longest / 2)
                ratios.Add(ratio);
        }
        ratios.Sort();
        return ratios[ratios.Count / 2];
    }

    private static TimeSpan TimeOf(Action act)
    {
        var before = Environment.CpuUsage.TotalTime;
        act();
        return Environment.CpuUsage.TotalTime - before;
    }
}
