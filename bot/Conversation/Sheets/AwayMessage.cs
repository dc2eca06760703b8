using System.Text.Json;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Conversation.Sheets;

/// <summary>
/// A message in the form in which the page sends it: <c>{"turnId", "by", "text" | "answer" | "opening"}</c>.
/// </summary>
public static class AwayMessage
{
    /// <exception cref="ArgumentException">It is none; the message says why.</exception>
    public static Message Read(JsonElement turn)
    {
        string turnId = Text(turn, "turnId") ?? throw new ArgumentException("the turn has no turnId", nameof(turn));
        string by = Text(turn, "by") ?? throw new ArgumentException("the turn does not say who speaks", nameof(turn));
        return new Message(turnId, Body(turn), by);
    }

    private static MessageBody Body(JsonElement turn)
    {
        if (turn.TryGetProperty("opening", out _)) return new MessageBody.Opening();
        return AnswerReader.TryRead(turn, out MessageBody? body, out string? problem)
            ? body
            : throw new ArgumentException(problem, nameof(turn));
    }

    private static string? Text(JsonElement turn, string name) =>
        turn.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.String
            ? value.GetString()
            : null;
}
