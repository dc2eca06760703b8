using System.Collections.Immutable;

namespace DxAssistant.Conversation.Replies;

/// <summary>What the assistant answers to one message.</summary>
/// <param name="Segments">The sentences, in reading order, each with where it comes from.</param>
/// <param name="Question">The one question now open; null when the case is closed.</param>
/// <param name="Belief">The faults still in question, most likely first; empty before the walk begins.</param>
/// <param name="Access">The access state the unit is confirmed to be in; null before the walk begins.</param>
public sealed record Reply(
    ImmutableArray<Segment> Segments,
    OpenQuestion? Question,
    ImmutableArray<BeliefLine> Belief,
    string? Access);
