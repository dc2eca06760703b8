using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>Counted blinks found in a message.</summary>
/// <param name="First">The first token of the first count.</param>
/// <param name="End">The token after the last count.</param>
internal sealed record Blinks(int First, int End, ImmutableArray<LampCount> Lamps, int? Count);
