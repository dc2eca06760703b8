namespace DxAssistant.Benchmarks.Live;

/// <summary>What some runs took, milliseconds.</summary>
/// <param name="Low">A quarter of the runs took less.</param>
/// <param name="High">A quarter of the runs took more.</param>
internal sealed record Spread(double Median, double Low, double High, double Slowest)
{
    public static Spread Of(IEnumerable<double> runs)
    {
        double[] sorted = [.. runs.Order()];
        return new Spread(sorted[sorted.Length / 2], sorted[sorted.Length / 4], sorted[sorted.Length * 3 / 4], sorted[^1]);
    }

    public override string ToString() => FormattableString.Invariant($"{Median:0} ({Low:0}–{High:0}), {Slowest:0}");
}
