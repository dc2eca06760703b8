namespace DxAssistant.Benchmarks.Ratios;

/// <summary>One piece of work to measure.</summary>
/// <param name="Name">Unique in its group.</param>
/// <param name="Act">Gives its result, so that the work is not optimized away.</param>
internal sealed record Workload(string Name, Func<object?> Act);
