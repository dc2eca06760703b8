namespace DxAssistant.Benchmarks;

/// <summary>
/// Something whose cost is worth knowing. One group, one file; <see cref="BenchmarkGroups"/> lists them.
/// </summary>
internal interface IBenchmarkGroup
{
    /// <summary>As the command line names it: one lower-case word.</summary>
    string Name { get; }

    /// <summary>Measures, and writes what came of it.</summary>
    void Run(ResultFolder results);
}
