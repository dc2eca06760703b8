using DxAssistant.Bot.Tests.Server;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>Whatever a channel sends as an activity.</summary>
internal sealed class ActivityFuzz() : AddressFuzz("activities", 300)
{
    private const string Message =
        """{"type":"message","id":"m1","text":"fan dead","channelId":"test","serviceUrl":"http://localhost:1","deliveryMode":"expectReplies","conversation":{"id":"c"},"from":{"id":"p","name":"Ann"},"recipient":{"id":"bot"}}""";

    protected override Task<RunningServer> StartAsync() => RunningServer.StartAtPaceAsync(0);

    protected override Task<IEnumerable<string>> FirstAsync() => Task.FromResult<IEnumerable<string>>(
    [
        $"POST /api/messages\n{Message}",
        $"POST /api/messages\n{Message.Replace("\"text\":\"fan dead\"", "\"value\":{\"choice\":\"yes\"}", StringComparison.Ordinal)}",
        $"POST /api/messages\n{Message.Replace("\"type\":\"message\"", "\"type\":\"conversationUpdate\",\"membersAdded\":[{\"id\":\"p\"}]", StringComparison.Ordinal)}",
    ]);
}
