using System.Collections.Immutable;
using System.Text.Json.Serialization;
using DxAssistant.Conversation.State;

namespace DxAssistant.Conversation.Messages;

/// <summary>What a message holds. There are exactly six forms.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "form")]
[JsonDerivedType(typeof(Opening), "opening")]
[JsonDerivedType(typeof(Words), "words")]
[JsonDerivedType(typeof(Choice), "choice")]
[JsonDerivedType(typeof(Readings), "readings")]
[JsonDerivedType(typeof(Command), "command")]
[JsonDerivedType(typeof(Earlier), "earlier")]
public abstract record MessageBody
{
    private MessageBody() { }

    /// <summary>The person opened the case and has said nothing yet.</summary>
    public sealed record Opening : MessageBody;

    /// <summary>Typed or dictated words.</summary>
    /// <param name="Question">The id of the question that was in sight; null when the channel does not know it.</param>
    public sealed record Words(string Text, string? Question = null) : MessageBody;

    /// <summary>An option that was tapped.</summary>
    /// <param name="Question">The id of the question that offered it; null stands for the open one.</param>
    public sealed record Choice(string? Question, string Key) : MessageBody;

    /// <summary>A form of readings that was sent.</summary>
    /// <param name="Question">The id of the question that asked for them; null stands for the open one.</param>
    public sealed record Readings(string? Question, ImmutableArray<FilledField> Fields) : MessageBody;

    /// <summary>
    /// What the program itself looked up about the unit. Never taken from a person or a channel: it is evidence.
    /// </summary>
    /// <param name="Reopens">Whether another visit begins on a closed case.</param>
    public sealed record Earlier(ImmutableArray<EarlierWork> Work, bool Reopens) : MessageBody;

    /// <summary>A command that was tapped.</summary>
    public sealed record Command(CommandWord Word) : MessageBody;
}
