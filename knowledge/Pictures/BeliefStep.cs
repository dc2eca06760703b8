using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>How likely the faults were after one thing was learnt.</summary>
/// <param name="What">What was learnt, in words.</param>
/// <param name="Probabilities">By the id of the fault; 0 for one that is not named.</param>
public sealed record BeliefStep(string What, ImmutableSortedDictionary<string, double> Probabilities);
