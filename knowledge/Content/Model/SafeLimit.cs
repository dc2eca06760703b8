using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>What a reading of a safety step must not exceed.</summary>
/// <param name="Unit">The unit of the page.</param>
/// <param name="AtMost">In the SI base of the unit; the limit itself is safe.</param>
/// <param name="Text">As the page says it.</param>
public sealed record SafeLimit(Passage Reading, Unit Unit, double AtMost, Passage Text);
