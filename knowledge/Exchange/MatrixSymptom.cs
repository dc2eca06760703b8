using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>A column of the matrix.</summary>
/// <param name="Causes">P(symptom | fault), above 0 and at most 1, of the faults that show it.</param>
public sealed record MatrixSymptom(string Id, ImmutableSortedDictionary<string, double> Causes);
