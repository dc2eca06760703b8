using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>A row of the matrix.</summary>
/// <param name="Weight">How common the fault is against the others; above 0.</param>
/// <param name="Repairs">What cures it; may be empty in a matrix from elsewhere.</param>
public sealed record MatrixFault(string Id, double Weight, ImmutableArray<string> Repairs);
