using System.Text.Json.Nodes;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Cases.Log;

/// <summary>Finds the places of an event at which a person's own words stand.</summary>
/// <remarks>Readings are not among them: they are the evidence, and no words about anybody.</remarks>
internal static class OwnWords
{
    /// <summary>Whether there can be any; false for most events, which need not be looked through.</summary>
    public static bool MayBeIn(CaseEvent happened) => happened switch
    {
        Said said => said.Body is not (MessageBody.Opening or MessageBody.Choice or MessageBody.Command),
        Replied replied =>
            replied.Reply.Segments.Any(segment => segment.From.Any(origin => origin is Provenance.Person)),
        SymptomReported or RepairTriedBefore or OutcomeSeen or UnitNoted or PersonNoted or NoteWritten or WholeTold =>
            true,
        _ => false,
    };

    /// <summary>The places, as JSON Pointers, in the order of the event.</summary>
    public static IEnumerable<string> In(JsonNode entry) => (string?)entry["event"] switch
    {
        "said" => Named(entry["body"], "/body", "text"),
        "symptom-reported" or "repair-tried-before" => Named(entry, "", "words"),
        "outcome-seen" when entry["verdict"] is null => Named(entry, "", "words"),
        "unit-noted" => Named(entry, "", "site"),
        "person-noted" => [.. Named(entry, "", "name"), .. Named(entry, "", "phone")],
        "note-written" => Named(entry, "", "text"),
        "whole-told" => Each(entry["items"], "/items", (item, at) => Named(item, at, "words")),
        "replied" => Each(entry["reply"]?["segments"], "/reply/segments", SaidBack),
        _ => [],
    };

    private static IEnumerable<string> SaidBack(JsonNode segment, string at) =>
        segment["from"] is JsonArray from && from.Any(origin => (string?)origin?["origin"] == "person")
            ? Named(segment, at, "text") : [];

    private static IEnumerable<string> Each(
        JsonNode? list, string at, Func<JsonNode, string, IEnumerable<string>> within) =>
        list is JsonArray items
            ? items.SelectMany((item, i) => item is null ? [] : within(item, FormattableString.Invariant($"{at}/{i}")))
            : [];

    private static IEnumerable<string> Named(JsonNode? holder, string at, string name) =>
        holder is JsonObject && holder[name] is JsonValue ? [$"{at}/{name}"] : [];
}
