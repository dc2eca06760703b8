using System.Text.Json;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Channels;

/// <summary>Looks at an activity from outside before the adapter takes it.</summary>
internal static class ActivityGate
{
    private const int MostBytes = 256 * 1024;

    /// <summary>Why the activity is turned away; null when it may pass. The body can be read again
    /// afterwards.</summary>
    public static async Task<IResult?> RefuseAsync(
        HttpRequest request, ServiceUrlList allowed, CancellationToken cancel)
    {
        if (!request.HasJsonContentType())
            return Refuse(StatusCodes.Status415UnsupportedMediaType, "send the activity as application/json");
        if (request.ContentLength > MostBytes)
            return Refuse(StatusCodes.Status413PayloadTooLarge, "the activity is over 256 KiB");
        request.EnableBuffering(bufferThreshold: MostBytes, bufferLimit: MostBytes);
        try
        {
            using var activity = await JsonDocument.ParseAsync(request.Body, cancellationToken: cancel);
            request.Body.Position = 0;
            return Refuse(activity.RootElement, allowed);
        }
        catch (JsonException)
        {
            return Refuse(StatusCodes.Status400BadRequest, "the body is not a JSON activity");
        }
        catch (InvalidOperationException)
        {
            // A string that is no text, such as half a surrogate pair.
            return Refuse(StatusCodes.Status400BadRequest, "the activity holds characters that are not Unicode");
        }
        catch (IOException)
        {
            return Refuse(StatusCodes.Status413PayloadTooLarge, "the activity is over 256 KiB");
        }
    }

    private static IResult? Refuse(JsonElement activity, ServiceUrlList allowed)
    {
        if (activity.ValueKind != JsonValueKind.Object) return Malformed("the activity has no type");
        if (ActivityNames.FirstDoubtful(activity) is { } name)
            return Malformed($"the name {JsonSerializer.Serialize(name)} is doubled or not spelled as in the schema");
        if (Text(activity, "type") is null) return Malformed("the activity has no type");
        bool named = activity.TryGetProperty("conversation", out var conversation)
            && conversation.ValueKind == JsonValueKind.Object && !string.IsNullOrEmpty(Text(conversation, "id"));
        if (!named) return Malformed("the activity has no conversation id");
        return string.Equals(Text(activity, "channelId"), LocalChatAdapter.Channel, StringComparison.OrdinalIgnoreCase)
            ? Refuse(StatusCodes.Status403Forbidden, "that channelId is the web chat's own")
            : RefuseAddress(activity, allowed);
    }

    private static IResult? RefuseAddress(JsonElement activity, ServiceUrlList allowed)
    {
        // With expectReplies nothing is posted anywhere: the replies are in the response.
        string? serviceUrl = Text(activity, "serviceUrl");
        bool posts = Text(activity, "deliveryMode") != Microsoft.Bot.Schema.DeliveryModes.ExpectReplies;
        if (posts && !allowed.Allows(serviceUrl))
        {
            return Refuse(
                StatusCodes.Status403Forbidden,
                "replies may not be posted to that serviceUrl: name it with --service-url, or ask with deliveryMode "
                    + "expectReplies");
        }

        return ServiceUrlList.Read(serviceUrl) is null
            ? Malformed("the activity has no serviceUrl that is an http or https address") : null;
    }

    private static string? Text(JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String
            ? value.GetString() : null;

    private static IResult Malformed(string error) => Refuse(StatusCodes.Status400BadRequest, error);

    private static IResult Refuse(int status, string error) => Refusal.Because(status, error);
}
