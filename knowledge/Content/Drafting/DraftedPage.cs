using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Drafting;

/// <summary>A page that was begun.</summary>
/// <param name="Path">Where it belongs in the folder.</param>
/// <param name="Additions">What other pages need, each as the place and the line to put there.</param>
public sealed record DraftedPage(string Path, string Text, ImmutableArray<(string Place, string Line)> Additions);
