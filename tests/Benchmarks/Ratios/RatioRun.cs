using System.Collections.Immutable;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Perfolizer.Horology;

namespace DxAssistant.Benchmarks.Ratios;

/// <summary>Measures pieces of work in this process, in short iterations: ratios are wanted, not digits.</summary>
internal static class RatioRun
{
    /// <summary>One figure for each piece of work, in the same order.</summary>
    /// <exception cref="InvalidOperationException">A piece of work could not be measured.</exception>
    public static ImmutableArray<Figure> Of(ImmutableArray<Workload> workloads, ResultFolder results)
    {
        RatioBenchmark.Workloads = workloads;
        var log = new LogCapture();
        var summary = BenchmarkRunner.Run<RatioBenchmark>(Config(results, log));
        var found = summary.Reports.ToDictionary(NameOf, report => report, StringComparer.Ordinal);
        return [.. workloads.Select(work => found.TryGetValue(work.Name, out var report) && report.Success
            ? From(work.Name, report)
            : throw new InvalidOperationException($"{work.Name} was not measured:\n{log.Text}"))];
    }

    private static ManualConfig Config(ResultFolder results, ILogger log) => ManualConfig.CreateEmpty()
        .AddJob(Job.Default.WithToolchain(InProcessEmitToolchain.Instance)
            .WithIterationTime(TimeInterval.FromMilliseconds(40)).WithWarmupCount(3).WithIterationCount(9))
        .AddDiagnoser(MemoryDiagnoser.Default).AddColumnProvider(DefaultColumnProviders.Instance).AddLogger(log)
        .WithArtifactsPath(results.Working).WithOptions(ConfigOptions.DisableLogFile);

    private static string NameOf(BenchmarkReport report) => (string)report.BenchmarkCase.Parameters["Name"];

    private static Figure From(string name, BenchmarkReport report) => new(
        name, report.ResultStatistics!.Median, report.ResultStatistics.ConfidenceInterval.Margin,
        report.GcStats.GetBytesAllocatedPerOperation(report.BenchmarkCase) ?? 0);
}
