using System.Collections.Immutable;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>Some words of a clause that stand together and mean something.</summary>
/// <param name="At">Its first word.</param>
/// <param name="Means">More than one thing when it is not clear which.</param>
internal sealed record Tile(int At, int Length, ImmutableArray<ToldThing> Means)
{
    public int End => At + Length;
}
