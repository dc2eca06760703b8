namespace DxAssistant.Conversation.Events;

/// <summary>A reading as it stands in the log.</summary>
/// <param name="State"><c>number</c>, <c>open-circuit</c> or <c>short-circuit</c>.</param>
/// <param name="Value">In the SI base unit of the quantity; 0 unless a number.</param>
/// <param name="Unit">The symbol of the unit it was given in.</param>
/// <param name="Words">The words it came in.</param>
public sealed record GivenReading(string Label, string State, double Value, string Unit, string Words);
