using DxAssistant.Benchmarks.Ratios;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Benchmarks.Planning;

/// <summary>What one plan of so many faults cost, and how good it is known to be.</summary>
internal sealed record GrowthPoint(int Faults, SequencingProblem Problem, Plan Plan, Figure Cost);
