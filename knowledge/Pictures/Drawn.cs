namespace DxAssistant.Knowledge.Pictures;

/// <summary>A picture made from figures.</summary>
/// <param name="Kind">What it is of, such as <c>sensor-curve</c>.</param>
/// <param name="Svg">One SVG element whose colours are classes, with its words in <c>title</c> and <c>desc</c>.</param>
/// <param name="Phrase">The phrase that says what it shows.</param>
/// <param name="Text">That phrase, filled in: the picture for those who cannot see it.</param>
public sealed record Drawn(string Kind, string Svg, string Phrase, string Text);
