namespace DxAssistant.Knowledge.Calculations;

/// <summary>One symbol of a formula and the number that was put in or came out.</summary>
/// <param name="Symbol">As it stands in the formula.</param>
public sealed record DerivationTerm(string Symbol, CalculationValue Value);
