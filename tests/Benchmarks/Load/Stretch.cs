using System.Globalization;

namespace DxAssistant.Benchmarks.Load;

/// <summary>What came of some seconds of load.</summary>
/// <param name="PerSecond">Turns that were acknowledged, a second.</param>
/// <param name="Half">Milliseconds within which half of them were answered.</param>
/// <param name="P99">Milliseconds within which 99 of 100 were answered.</param>
/// <param name="ProcessorMs">Milliseconds of a processor that the server used for one turn.</param>
internal sealed record Stretch(double PerSecond, double Half, double P99, double Slowest, double ProcessorMs)
{
    /// <summary>The share of its conversations that were had twice, because there were too few.</summary>
    public double Again { get; init; }

    public static Stretch Of(List<double> latencies, TimeSpan took, double processorSeconds)
    {
        latencies.Sort();
        double At(double share) => latencies.Count == 0
            ? double.NaN
            : latencies[Math.Min(latencies.Count - 1, (int)(share * latencies.Count))];
        return new Stretch(latencies.Count / took.TotalSeconds, At(0.5), At(0.99), At(1),
            1000 * processorSeconds / latencies.Count);
    }

    /// <summary>The medians of several stretches, figure by figure.</summary>
    public static Stretch Median(IReadOnlyList<Stretch> all) => new(
        Middle(all, s => s.PerSecond), Middle(all, s => s.Half), Middle(all, s => s.P99), Middle(all, s => s.Slowest),
        Middle(all, s => s.ProcessorMs)) { Again = Middle(all, s => s.Again) };

    /// <summary>The figures as cells of a table.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture,
            $"{PerSecond:0}{(Again > 0 ? $" ({Again:0 %} had twice)" : "")} | {Half:0.0} | {P99:0.0} | {Slowest:0} | {ProcessorMs:0.00}");

    /// <summary>The ratios to another's figures as cells of a table.</summary>
    public string Against(Stretch other) => string.Create(
        CultureInfo.InvariantCulture,
        $"{PerSecond / other.PerSecond:0.000} | {Half / other.Half:0.00} | {P99 / other.P99:0.00} | {Slowest / other.Slowest:0.00} | {ProcessorMs / other.ProcessorMs:0.0}");

    private static double Middle(IReadOnlyList<Stretch> all, Func<Stretch, double> of) =>
        all.Select(of).Order().ElementAt(all.Count / 2);
}
