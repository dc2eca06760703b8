using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using DxAssistant.Cases;
using DxAssistant.Conversation.Messages;
using DxAssistant.Server.Chat;
using Microsoft.Bot.Schema;
using Newtonsoft.Json;

namespace DxAssistant.Server.Channels;

/// <summary>Reads the message out of an activity: a tap from its value, words from its text.</summary>
internal static class ActivityReader
{
    /// <summary>Who spoke when the channel gives no name.</summary>
    public const string Nameless = "technician";

    public static bool TryRead(
        IMessageActivity activity, [NotNullWhen(true)] out Message? message, [NotNullWhen(false)] out string? problem)
    {
        message = null;
        if (!TryReadBody(activity, out var body, out problem)) return false;
        message = new Message(TurnOf(activity.Id), body, NameOf(activity.From));
        return true;
    }

    /// <summary>What a person is called in the record.</summary>
    public static string NameOf(ChannelAccount? person)
    {
        string name = SaidWords.Clean(person?.Name ?? "");
        return name.Length == 0 ? Nameless : name;
    }

    // A channel may number as it likes; what cannot stand as a turn's name is given one that a retry gets again.
    private static string TurnOf(string? id)
    {
        if (string.IsNullOrEmpty(id)) return Guid.NewGuid().ToString("N");
        return TurnName.IsFit(id) ? id : TurnName.Of(id);
    }

    private static bool TryReadBody(
        IMessageActivity activity, [NotNullWhen(true)] out MessageBody? body, [NotNullWhen(false)] out string? problem)
    {
        problem = null;
        body = activity.Value as MessageBody;
        if (body is not null) return true;
        if (activity.Value is null) return SaidWords.TryRead(activity.Text, out body, out problem);

        // The channel's value comes as whatever its JSON reader makes of it; only its text is sure.
        using var value = JsonDocument.Parse(JsonConvert.SerializeObject(activity.Value));
        return activity.Text is { } text && !AnswerReader.HoldsForm(value.RootElement)
            ? SaidWords.TryRead(text, out body, out problem)
            : AnswerReader.TryRead(value.RootElement, out body, out problem);
    }
}
