using DxAssistant.Benchmarks.Ratios;

namespace DxAssistant.Benchmarks.Matching;

/// <summary>What matching costs over so many pages.</summary>
/// <param name="Bytes">What the matcher keeps in memory.</param>
/// <param name="BuildSeconds">How long it took to make.</param>
/// <param name="Plain">The plain search over the same pages, the messages one after the other.</param>
/// <param name="Ours">The matcher, the same messages.</param>
/// <param name="ProcessorTimes">
/// The processor time of the matcher against that of the plain search, both taking turns.
/// </param>
internal sealed record MatchingPoint(string Name, int Pages, long Bytes, double BuildSeconds, Figure Plain, Figure Ours,
    double ProcessorTimes)
{
    public double Times => Ours.Nanoseconds / Plain.Nanoseconds;
}
