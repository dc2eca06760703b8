using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>A wish to calculate.</summary>
/// <param name="Id">Name of the calculation, which may be followed by a running number: <c>ntc-beta-r-03</c>.</param>
/// <param name="Inputs">By name, as given.</param>
public sealed record CalculationRequest(string Id, ImmutableSortedDictionary<string, CalculationValue> Inputs);
