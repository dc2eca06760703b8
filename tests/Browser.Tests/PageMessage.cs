using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Browser.Tests;

/// <summary>A message in the form in which the page sends it.</summary>
internal static class PageMessage
{
    public static JsonObject Of(string turnId, MessageBody body) => new(
    [
        KeyValuePair.Create<string, JsonNode?>("turnId", turnId),
        KeyValuePair.Create<string, JsonNode?>("by", "technician"),
        .. Parts(body),
    ]);

    private static IEnumerable<KeyValuePair<string, JsonNode?>> Parts(MessageBody body) => body switch
    {
        MessageBody.Words words => [new("text", words.Text), new("question", words.Question)],
        MessageBody.Choice choice =>
            [new("answer", new JsonObject { ["question"] = choice.Question, ["choice"] = choice.Key })],
        MessageBody.Command command => [new("answer", new JsonObject { ["command"] = Name(command.Word) })],
        MessageBody.Readings readings =>
        [
            new("answer", new JsonObject
            {
                ["question"] = readings.Question,
                ["readings"] = new JsonObject(
                    readings.Fields.Select(f => KeyValuePair.Create<string, JsonNode?>(f.Label, f.Words))),
            }),
        ],
        _ => [new("opening", true)],
    };

    private static string Name(CommandWord word) =>
        JsonSerializer.SerializeToElement(word, ConversationJson.Default.CommandWord).GetString()!;
}
