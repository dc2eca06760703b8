using System.Text.Json;
using DxAssistant.Cases;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Server.Chat;

/// <summary>A turn as the page sends it: <c>{"turnId", "text", "question" | "answer"}</c>.</summary>
internal sealed record TurnRequest(string TurnId, MessageBody Body)
{
    // Room for the longest message with every character escaped, and no more.
    private const int MostBytes = 64 * 1024;

    public static async Task<(TurnRequest? Turn, IResult? Refusal)> ReadAsync(
        HttpRequest request, CancellationToken cancel)
    {
        if (!request.HasJsonContentType())
        {
            return Refuse(StatusCodes.Status415UnsupportedMediaType, "Send the turn as application/json.");
        }

        var body = await ReadBytesAsync(request, cancel);
        if (body is not { } bytes) return Refuse(StatusCodes.Status413PayloadTooLarge, SaidWords.TooLong);
        try
        {
            using var json = JsonDocument.Parse(bytes.GetBuffer().AsMemory(0, (int)bytes.Length));
            return Read(json.RootElement);
        }
        catch (InvalidOperationException)
        {
            return Refuse(StatusCodes.Status400BadRequest, "The turnId holds characters that are not Unicode.");
        }
        catch (JsonException)
        {
            return Refuse(StatusCodes.Status400BadRequest, "That was not JSON. Load the page anew and try again.");
        }
    }

    private static (TurnRequest?, IResult?) Read(JsonElement json)
    {
        if (!AnswerReader.TryRead(json, out var body, out string? problem))
        {
            bool tooLong = problem == SaidWords.TooLong;
            return Refuse(tooLong ? StatusCodes.Status413PayloadTooLarge : StatusCodes.Status400BadRequest, problem);
        }

        string? turnId = json.TryGetProperty("turnId", out var id) && id.ValueKind == JsonValueKind.String
            ? id.GetString() : null;
        if (turnId is null || !TurnName.IsFit(turnId))
        {
            return Refuse(
                StatusCodes.Status400BadRequest,
                $"The turn needs a turnId of its own, 1 to {TurnName.Longest} characters and not \"{CaseDesk.OpeningTurn}\".");
        }

        return (new TurnRequest(turnId, body), null);
    }

    private static async Task<MemoryStream?> ReadBytesAsync(HttpRequest request, CancellationToken cancel)
    {
        var bytes = new MemoryStream();
        byte[] part = new byte[8192];
        int read;
        while ((read = await request.Body.ReadAsync(part, cancel)) > 0)
        {
            // Read to the end all the same: a client that is still sending would not see the answer.
            if (bytes.Length <= MostBytes) bytes.Write(part, 0, read);
        }

        return bytes.Length > MostBytes ? null : bytes;
    }

    private static (TurnRequest?, IResult?) Refuse(int status, string error) =>
        (null, Chat.Refusal.Because(status, error));
}
