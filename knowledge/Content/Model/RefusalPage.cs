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
    ImmutableArray<Passage> SafeWay);
