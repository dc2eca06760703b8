using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A request that gets a fixed answer: unsafe, or off the topic.</summary>
/// <param name="Unsafe">True when it is refused; false when it is merely off the topic.</param>
public sealed record RefusalPage(
    string Id,
    Passage Title,
    bool Unsafe,
    ImmutableArray<Passage> SaidAs,
    ImmutableArray<Passage> Answer,
    ImmutableArray<Passage> SafeWay)
{
    /// <summary>Wordings in the same words that ask for nothing dangerous, and are not refused for their likeness.</summary>
    public ImmutableArray<Passage> SoundsAlike { get; init; } = [];

    /// <summary>
    /// What an owner does instead, who takes none of a technician's steps; empty where the safe way is anybody's.
    /// </summary>
    public ImmutableArray<Passage> OwnersWay { get; init; } = [];
}
