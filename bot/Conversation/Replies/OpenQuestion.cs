using System.Collections.Immutable;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Conversation.Replies;

/// <summary>The one question that is open.</summary>
/// <param name="Id">Unique within the case; an answer names it, so that a tap in a stale window is noticed.</param>
/// <param name="Kind">What is asked.</param>
/// <param name="Subject">The id of the check, access state or repair in question; empty where there is none.</param>
/// <param name="Text">The question.</param>
/// <param name="From">Where the question comes from.</param>
/// <param name="Options">What can be tapped.</param>
/// <param name="Fields">The readings to fill in; empty when only a choice is asked.</param>
/// <param name="Commands">The commands that make sense here, in the order to show them.</param>
public sealed record OpenQuestion(
    string Id,
    QuestionKind Kind,
    string Subject,
    string Text,
    ImmutableArray<Provenance> From,
    ImmutableArray<Option> Options,
    ImmutableArray<Field> Fields,
    ImmutableArray<CommandWord> Commands);
