using System.Collections.Immutable;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Readings in the order the judge wants them, and the inputs by name.</summary>
public sealed record JudgeRequest(ImmutableArray<Reading> Readings, ImmutableSortedDictionary<string,
    JudgeInput> Inputs);
