namespace DxAssistant.Benchmarks.Ratios;

/// <summary>What one piece of work cost.</summary>
/// <param name="Nanoseconds">Mean of the iterations.</param>
/// <param name="ErrorNanoseconds">Half of the 99.9 % confidence interval of that mean.</param>
/// <param name="AllocatedBytes">For one run of it.</param>
internal sealed record Figure(string Name, double Nanoseconds, double ErrorNanoseconds, long AllocatedBytes);
