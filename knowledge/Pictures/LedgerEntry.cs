namespace DxAssistant.Knowledge.Pictures;

/// <summary>How far one result moved the odds of a fault against the others in question.</summary>
/// <param name="What">The result, in words.</param>
/// <param name="LogOdds">Natural logarithm of the factor; above 0 for the fault, below 0 against it.</param>
public sealed record LedgerEntry(string What, double LogOdds);
