using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;

namespace DxAssistant.Benchmarks.Ratios;

/// <summary>What BenchmarkDotNet runs: the pieces of work set beforehand, by their names.</summary>
public class RatioBenchmark
{
    private Func<object?> _act = () => null;

    internal static ImmutableArray<Workload> Workloads { get; set; } = [];

    public static IEnumerable<string> Names => Workloads.Select(work => work.Name);

    [ParamsSource(nameof(Names))]
    public string Name { get; set; } = "";

    [GlobalSetup]
    public void Choose() => _act = Workloads.Single(work => work.Name == Name).Act;

    [Benchmark]
    public object? Act() => _act();
}
