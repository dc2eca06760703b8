using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Replies;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Commands;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Server.Channels;

/// <summary>One case driven by a program: a turn a line, the reply a line. <c>{"open":true}</c> shows the opening
/// question; text may name the <c>question</c> it answers.</summary>
internal sealed class JsonTalk(Streams streams, CaseConversation conversation)
{
    public async Task<int> RunAsync(CancellationToken cancel)
    {
        var opening = await conversation.OpenAsync(cancel);
        return await JsonLines.RunAsync(streams, (request, c) => AnswerAsync(request, opening, c), cancel);
    }

    private async Task<JsonObject> AnswerAsync(JsonElement request, Reply opening, CancellationToken cancel)
    {
        if (request.TryGetProperty("open", out _)) return Shown(opening);
        if (!AnswerReader.TryRead(request, out var body, out string? problem)) throw new RequestException(problem);
        return Shown(await conversation.SayAsync(body, cancel));
    }

    private JsonObject Shown(Reply reply)
    {
        var shown = (JsonObject)JsonSerializer.SerializeToNode(reply, ConversationJson.Default.Reply)!;
        shown.Insert(0, "case", conversation.CaseId);
        shown["cautions"] = new JsonArray(
            [.. reply.Segments.Where(s => s.Kind == SegmentKind.Caution).Select(s => (JsonNode)s.Text)]);
        return shown;
    }
}
