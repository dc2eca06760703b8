namespace DxAssistant.Knowledge.Glyphs;

/// <summary>How often one lamp blinks before the pattern repeats.</summary>
/// <param name="Lamp">Its color or name in lower case, <c>long</c> and <c>short</c>, or <c>first</c> and <c>second</c>
/// for the groups of one lamp.</param>
/// <param name="Blinks">1 to 99.</param>
public sealed record LampCount(string Lamp, int Blinks);
