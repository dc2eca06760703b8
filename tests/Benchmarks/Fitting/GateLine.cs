using DxAssistant.Knowledge.Search.Gates;
using DxAssistant.Knowledge.Tests.Search;

namespace DxAssistant.Benchmarks.Fitting;

/// <summary>A line of a development set as it was heard.</summary>
/// <param name="Set">The set that it stands in.</param>
/// <param name="Weight">How many lines it counts for.</param>
internal sealed record GateLine(string Set, double Weight, JudgedPhrase Phrase, HeardMessage Heard)
{
    /// <summary>Whether it complains of a unit.</summary>
    public bool IsComplaint => Set.StartsWith("symptoms", StringComparison.Ordinal)
        || Phrase.Fault is not ("" or "none" or "refuse" or "harmless");

    public FitLine Fit(double[] signs, bool holds, double weight) => new(Set, Phrase.Text, signs, holds, weight);
}
