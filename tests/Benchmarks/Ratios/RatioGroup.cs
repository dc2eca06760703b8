using System.Collections.Immutable;

namespace DxAssistant.Benchmarks.Ratios;

/// <summary>A group whose pieces of work are each measured against one plain piece of work of the same run.</summary>
internal abstract class RatioGroup : IBenchmarkGroup
{
    public abstract string Name { get; }

    /// <summary>What the figures tell, for the head of the table.</summary>
    protected abstract string Title { get; }

    /// <summary>What everything is compared with.</summary>
    protected abstract Workload Baseline { get; }

    protected abstract ImmutableArray<Workload> Workloads { get; }

    public void Run(ResultFolder results)
    {
        var figures = RatioRun.Of([Baseline, .. Workloads], results);
        results.Write($"{Name}.md", RatioTable.Text(Title, figures[0], figures[1..]));
    }
}
