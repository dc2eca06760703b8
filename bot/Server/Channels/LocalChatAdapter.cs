using DxAssistant.Cases;
using Microsoft.Bot.Builder;
using Microsoft.Bot.Schema;

namespace DxAssistant.Server.Channels;

/// <summary>The channel of the web chat and the terminal: the same handler as any other channel, without a network
/// between.</summary>
/// <remarks>The conversation's id is the case's name.</remarks>
internal sealed class LocalChatAdapter(IBot bot) : BotAdapter
{
    public const string Channel = "local";

    /// <summary>Runs one activity through the handler and gathers the replies.</summary>
    public async Task<LocalTurn> SendAsync(Activity activity, CancellationToken cancel)
    {
        activity.ChannelId = Channel;
        activity.ServiceUrl = "urn:local";
        activity.Recipient = new ChannelAccount("assistant");
        var sent = new List<Activity>();
        using var turn = new TurnContext(this, activity);
        turn.TurnState.Add(sent);
        await RunPipelineAsync(turn, bot.OnTurnAsync, cancel);
        return new LocalTurn(sent, turn.TurnState.Get<DeskAnswer>());
    }

    public override Task<ResourceResponse[]> SendActivitiesAsync(
        ITurnContext turnContext, Activity[] activities, CancellationToken cancellationToken)
    {
        var sent = turnContext.TurnState.Get<List<Activity>>();
        foreach (var activity in activities)
        {
            activity.Id ??= $"{turnContext.Activity.Id}-{sent.Count + 1}";
            sent.Add(activity);
        }

        return Task.FromResult(activities.Select(a => new ResourceResponse(a.Id)).ToArray());
    }

    public override Task<ResourceResponse> UpdateActivityAsync(
        ITurnContext turnContext, Activity activity, CancellationToken cancellationToken) =>
        throw new NotSupportedException("the log is append-only: a reply cannot be changed");

    public override Task DeleteActivityAsync(
        ITurnContext turnContext, ConversationReference reference, CancellationToken cancellationToken) =>
        throw new NotSupportedException("the log is append-only: a reply cannot be deleted");
}
