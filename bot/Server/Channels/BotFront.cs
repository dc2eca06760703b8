using System.Collections.Immutable;
using DxAssistant.Server.Chat;
using Microsoft.Bot.Builder;
using Microsoft.Bot.Builder.Integration.AspNet.Core;
using Microsoft.Bot.Connector.Authentication;
using Microsoft.Bot.Schema;

namespace DxAssistant.Server.Channels;

/// <summary>The front for outside channels: the Bot Framework activity protocol at <c>/api/messages</c>.</summary>
internal static class BotFront
{
    public const string Path = "/api/messages";

    private const string Unanswered =
        "the reply could not be handed to the address in serviceUrl; what was said is kept, and sent again under the "
            + "same id it is not taken twice";

    public static void AddTo(IServiceCollection services, ImmutableArray<Uri> serviceUrls)
    {
        services.AddHttpClient();
        services.AddSingleton(new ServiceUrlList(serviceUrls));
        services.AddSingleton<BotFrameworkAuthentication, ConfigurationBotFrameworkAuthentication>();
        services.AddSingleton<IBotFrameworkHttpAdapter>(p => new CloudAdapter(
            p.GetRequiredService<BotFrameworkAuthentication>(), p.GetRequiredService<ILogger<CloudAdapter>>()));
    }

    public static void Map(IEndpointRouteBuilder routes) => routes.MapPost(Path, TakeAsync);

    /// <summary>Whether callers must prove who they are.</summary>
    public static bool HasAppId(IConfiguration configuration) => !string.IsNullOrEmpty(configuration["MicrosoftAppId"]);

    // The reply goes to the address that the activity names: nobody may be there, or it may say no.
    private static bool IsOfTheChannel(Exception error) =>
        error is HttpRequestException or TaskCanceledException or ErrorResponseException;

    private static async Task TakeAsync(
        HttpContext http, ServiceUrlList allowed, IBotFrameworkHttpAdapter adapter, IBot bot, CancellationToken cancel)
    {
        if (await ActivityGate.RefuseAsync(http.Request, allowed, cancel) is { } refusal)
        {
            await refusal.ExecuteAsync(http);
            return;
        }

        try
        {
            await adapter.ProcessAsync(http.Request, http.Response, bot, cancel);
        }
        catch (Exception error) when (!http.Response.HasStarted && !cancel.IsCancellationRequested
            && IsOfTheChannel(error))
        {
            await Refusal.Because(StatusCodes.Status502BadGateway, Unanswered).ExecuteAsync(http);
        }
    }
}
