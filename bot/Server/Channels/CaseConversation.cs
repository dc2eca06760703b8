using System.Globalization;
using DxAssistant.Cases;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using Microsoft.Bot.Schema;

namespace DxAssistant.Server.Channels;

/// <summary>One case on the local channel, one turn after the other.</summary>
internal sealed class CaseConversation(LocalChatAdapter adapter, string caseId)
{
    private readonly string session = Guid.NewGuid().ToString("N");
    private int turns;

    public string CaseId { get; } = caseId;

    /// <summary>Opens the case, or hears its first reply again.</summary>
    public async Task<Reply> OpenAsync(CancellationToken cancel)
    {
        var turn = await adapter.SendAsync(LocalActivity.Opening(CaseId), cancel);
        return ((DeskAnswer.Answered)turn.Answer!).Reply;
    }

    /// <summary>Says or taps something.</summary>
    public async Task<Reply> SayAsync(MessageBody body, CancellationToken cancel)
    {
        string turnId = string.Create(CultureInfo.InvariantCulture, $"{session}-{++turns}");
        var turn = await adapter.SendAsync(LocalActivity.Message(CaseId, turnId, body), cancel);
        return turn.Answer is DeskAnswer.Answered answered
            ? answered.Reply
            : throw new InvalidOperationException($"case {CaseId} is not open");
    }
}
