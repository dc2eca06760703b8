using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>One reading a check asks for.</summary>
/// <param name="Unit">The unit a bare number is taken in.</param>
/// <param name="Lowest">The least that is physically possible, in the SI base of the unit; included.</param>
/// <param name="Highest">The most that is physically possible, in the SI base of the unit; included.</param>
/// <param name="Possible">The same as the page says it.</param>
/// <param name="Where">Where the leads or gauges go.</param>
public sealed record ReadingField(
    string Label, Unit Unit, double Lowest, double Highest, Passage Possible, Passage Where);
