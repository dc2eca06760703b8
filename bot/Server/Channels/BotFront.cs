using System.Collections.Immutable;
using Microsoft.Bot.Builder;
using Microsoft.Bot.Builder.Integration.AspNet.Core;
using Microsoft.Bot.Connector.Authentication;

namespace DxAssistant.Server.Channels;

/// <summary>The front for outside channels: the Bot Framework activity protocol at <c>/api/messages</c>.</summary>
internal static class BotFront
{
    public const string Path = "/api/messages";

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

    private static async Task TakeAsync(
        HttpContext http, ServiceUrlList allowed, IBotFrameworkHttpAdapter adapter, IBot bot, CancellationToken cancel)
    {
        if (await ActivityGate.RefuseAsync(http.Request, allowed, cancel) is { } refusal)
        {
            await refusal.ExecuteAsync(http);
            return;
        }

        await adapter.ProcessAsync(http.Request, http.Response, bot, cancel);
    }
}
