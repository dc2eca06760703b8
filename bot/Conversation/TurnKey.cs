using System.Runtime.CompilerServices;
using System.Text;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;

namespace DxAssistant.Conversation;

/// <summary>All that a turn depends on besides the pages: where the case stands, and what was said.</summary>
/// <param name="State">
/// Told from others by being the same object: comparing all that is in it would take longer than most turns.
/// </param>
/// <param name="Said">In a form that no other message has.</param>
internal readonly record struct TurnKey(CaseState State, string Said)
{
    // What is longer is hardly said twice.
    private const int Longest = 400;

    /// <summary>Null for what is not worth keeping in mind.</summary>
    public static TurnKey? Of(CaseState state, MessageBody body) =>
        Write(body) is { Length: <= Longest } said ? new TurnKey(state, said) : null;

    public bool Equals(TurnKey other) =>
        ReferenceEquals(State, other.State) && string.Equals(Said, other.Said, StringComparison.Ordinal);

    public override int GetHashCode() =>
        HashCode.Combine(RuntimeHelpers.GetHashCode(State), StringComparer.Ordinal.GetHashCode(Said));

    private static string? Write(MessageBody body) => body switch
    {
        MessageBody.Opening => "o",
        MessageBody.Choice choice => Listed("c", [choice.Question, choice.Key]),
        MessageBody.Command command => Listed("d", [command.Word.ToString()]),
        MessageBody.Words words => Listed("w", [words.Question, words.Text]),
        MessageBody.Readings readings =>
            Listed("r", readings.Fields.SelectMany(field => new[] { field.Label, field.Words })
                .Prepend(readings.Question)),
        _ => null,
    };

    // Each with its length before it, so that no two lists look alike.
    private static string Listed(string form, IEnumerable<string?> parts)
    {
        var text = new StringBuilder(form);
        foreach (string? part in parts)
        {
            if (part is null) text.Append('-');
            else text.Append(part.Length).Append(':').Append(part);
        }

        return text.ToString();
    }
}
