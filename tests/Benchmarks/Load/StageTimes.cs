using System.Globalization;

namespace DxAssistant.Benchmarks.Load;

/// <summary>Processor milliseconds of stages.</summary>
internal sealed class StageTimes
{
    private readonly SortedDictionary<string, List<double>> stages = new(StringComparer.Ordinal);

    /// <summary>Does a stage and notes the processor time of the whole process meanwhile.</summary>
    public T Of<T>(string stage, Func<T> work)
    {
        var start = Environment.CpuUsage.TotalTime;
        T result = work();
        if (!stages.TryGetValue(stage, out var all)) stages[stage] = all = [];
        all.Add((Environment.CpuUsage.TotalTime - start).TotalMilliseconds);
        return result;
    }

    /// <summary>One table line for each stage.</summary>
    public string Rows()
    {
        int turns = stages["request"].Count;
        return string.Concat(stages.Select(stage => Row(stage.Key, stage.Value, turns)))
            + string.Create(CultureInfo.InvariantCulture,
                $"| all | {turns} | {stages.Values.Sum(all => all.Sum()) / turns:0.000} | | | |\n");
    }

    private static string Row(string name, List<double> all, int turns)
    {
        double[] sorted = [.. all.Order()];
        return string.Create(CultureInfo.InvariantCulture,
            $"| {name} | {sorted.Length} | {sorted.Sum() / turns:0.000} | {sorted.Average():0.000} | {sorted[sorted.Length / 2]:0.000} | {sorted[sorted.Length * 99 / 100]:0.000} |\n");
    }
}
