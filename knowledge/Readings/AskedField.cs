using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Readings;

/// <summary>One line of a form: what a check asks to be read.</summary>
/// <param name="Label">How the form names it: <c>U–V</c>, <c>Outdoor air</c>.</param>
/// <param name="Unit">The unit that stands beside it.</param>
/// <param name="Possible">What it can give; null if not known.</param>
public sealed record AskedField(string Label, Unit Unit, PossibleRange? Possible);
