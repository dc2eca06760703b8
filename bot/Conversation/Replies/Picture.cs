using System.Collections.Immutable;

namespace DxAssistant.Conversation.Replies;

/// <summary>A picture of a reply: it shows again what is said in words beside it.</summary>
/// <param name="Id">The same for the same picture; unlike for unlike ones.</param>
/// <param name="Kind">What it is of, such as <c>page</c> or <c>sensor-curve</c>.</param>
/// <param name="Svg">One SVG element, coloured by classes; no script, no style, nothing from elsewhere.</param>
/// <param name="Text">What it shows, for those who cannot see it.</param>
/// <param name="From">Where it comes from; never empty.</param>
public sealed record Picture(string Id, string Kind, string Svg, string Text, ImmutableArray<Provenance> From);
