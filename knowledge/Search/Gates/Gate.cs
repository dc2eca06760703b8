using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Learning;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>
/// A logistic regression: what each sign of a message speaks for something, in log odds, and the probability of it all.
/// </summary>
/// <param name="weights">
/// The signs by name, with their weights; fitted by the group "gates" of tests/Benchmarks.
/// </param>
internal sealed class Gate(ImmutableArray<(string Sign, double Weight)> weights)
{
    public ImmutableArray<(string Sign, double Weight)> Weights => weights;

    /// <param name="signs">How strong each sign is, in the order of the weights.</param>
    public double Of(ReadOnlySpan<double> signs)
    {
        var odds = 0.0;
        for (var at = 0; at < weights.Length; at++)
            odds += weights[at].Weight * signs[at];
        return Logistic.Of(odds);
    }
}
