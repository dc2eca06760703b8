using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Conversation.Sheets;

/// <summary>
/// Reads what a person said or tapped from JSON: <c>{"text"}</c>, or <c>{"answer":{…}}</c> with <c>{"choice":key}</c>,
/// <c>{"readings":{label:words}}</c> or <c>{"command":word}</c>; text and answer may name their <c>question</c>.
/// </summary>
public static class AnswerReader
{
    private const string Forms =
        """send {"text":"…"} or {"answer":{"choice":"…"}}, {"answer":{"readings":{"…":"…"}}} or {"answer":{"command":"…"}}""";

    public static bool TryRead(
        JsonElement request, [NotNullWhen(true)] out MessageBody? body, [NotNullWhen(false)] out string? problem)
    {
        try
        {
            body = null;
            problem = null;
            if (request.ValueKind != JsonValueKind.Object) problem = $"not a message: {Forms}";
            else if (request.TryGetProperty("text", out var text)
                && Names(request, "answer", "choice", "readings", "command"))
                problem = $"text and an answer at once: {Forms}";
            else if (request.TryGetProperty("text", out text))
                return TryReadText(text, Text(request, "question"), out body, out problem);
            else if (request.TryGetProperty("answer", out var answer))
                return TryReadAnswer(answer, out body, out problem);
            else if (Names(request, "choice", "readings", "command"))
                return TryReadAnswer(request, out body, out problem);
            else problem = $"neither text nor answer: {Forms}";
            return false;
        }
        catch (InvalidOperationException)
        {
            // A string that is no text, such as half a surrogate pair.
            (body, problem) = (null, "the text holds characters that are not Unicode: send it as UTF-8");
            return false;
        }
    }

    /// <summary>Whether JSON from a channel is meant for this program at all.</summary>
    public static bool HoldsForm(JsonElement value) =>
        value.ValueKind == JsonValueKind.Object && Names(value, "text", "answer", "choice", "readings", "command");

    private static bool TryReadText(
        JsonElement text, string? question, [NotNullWhen(true)] out MessageBody? body,
        [NotNullWhen(false)] out string? problem)
    {
        (body, problem) = (null, """the text must be a string, such as {"text":"code b4"}""");
        return text.ValueKind == JsonValueKind.String
            && SaidWords.TryRead(text.GetString(), out body, out problem, question);
    }

    private static bool TryReadAnswer(
        JsonElement answer, [NotNullWhen(true)] out MessageBody? body, [NotNullWhen(false)] out string? problem)
    {
        (body, problem) = (null, $"the answer names no choice, readings or command: {Forms}");
        if (answer.ValueKind != JsonValueKind.Object) return false;
        string? question = Text(answer, "question");
        if (Text(answer, "choice") is { } key) body = new MessageBody.Choice(question, key);
        else if (answer.TryGetProperty("readings", out var readings))
            return TryReadReadings(question, readings, out body, out problem);
        else if (Text(answer, "command") is { } word) return TryReadCommand(word, out body, out problem);
        return body is not null;
    }

    private static bool TryReadReadings(
        string? question, JsonElement readings, [NotNullWhen(true)] out MessageBody? body,
        [NotNullWhen(false)] out string? problem)
    {
        (body, problem) = (null, """readings are label and words, such as {"readings":{"U–V":"1.2 Ω"}}""");
        if (readings.ValueKind != JsonValueKind.Object) return false;
        var fields = ImmutableArray.CreateBuilder<FilledField>();
        foreach (var field in readings.EnumerateObject())
        {
            if (field.Value.ValueKind is not (JsonValueKind.String or JsonValueKind.Number)) return false;
            fields.Add(new FilledField(field.Name, SaidWords.Clean(field.Value.ToString())));
        }

        problem = fields.Sum(f => f.Label.Length + f.Words.Length) > SaidWords.Longest ? SaidWords.TooLong : null;
        if (problem is not null) return false;
        body = new MessageBody.Readings(question, fields.ToImmutable());
        return true;
    }

    private static bool TryReadCommand(
        string word, [NotNullWhen(true)] out MessageBody? body, [NotNullWhen(false)] out string? problem)
    {
        body = CommandNames.Find(word) is { } command ? new MessageBody.Command(command) : null;
        problem = body is null
            ? $"no command {JsonSerializer.Serialize(word, ConversationJson.Default.String)}: send one of {CommandNames.List}"
            : null;
        return body is not null;
    }

    private static bool Names(JsonElement element, params string[] names) =>
        names.Any(n => element.TryGetProperty(n, out _));

    private static string? Text(JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String
            ? value.GetString() : null;
}
