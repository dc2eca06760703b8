namespace DxAssistant.Benchmarks.Live;

/// <summary>What some runs took, milliseconds.</summary>
/// <param name="Low">A quarter of the runs took less.</param>
/// <param name="High">A quarter of the runs took more.</param>
internal sealed record Spread(double Median, double Low, double High, Timing Slowest)
{
    public static Spread Of(IEnumerable<Timing> runs)
    {
        Timing[] sorted = [.. runs.OrderBy(run => run.Milliseconds)];
        return new Spread(
            sorted[sorted.Length / 2].Milliseconds, sorted[sorted.Length / 4].Milliseconds,
            sorted[sorted.Length * 3 / 4].Milliseconds, sorted[^1]);
    }

    public override string ToString() =>
        FormattableString.Invariant($"{Median:0} ({Low:0}–{High:0}), {Slowest.Milliseconds:0}");
}
