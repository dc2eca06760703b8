using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>A picture of what the pages say together.</summary>
/// <param name="Svg">One SVG element whose colours are classes; its boxes are links <c>#path-of-the-page</c>.</param>
/// <param name="Lines">The same for those who cannot see it, line by line.</param>
/// <param name="IsPage">True when it fills a page of A4 within its margins.</param>
public sealed record Planned(string Svg, ImmutableArray<PlannedLine> Lines, bool IsPage = false);
