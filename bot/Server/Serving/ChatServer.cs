using DxAssistant.Cases;
using DxAssistant.Server.Channels;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Offline;
using DxAssistant.Server.Operations;
using DxAssistant.Server.Summary;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.Bot.Builder;

namespace DxAssistant.Server.Serving;

/// <summary>Puts the parts together: pages, the web chat's requests, the bot's front.</summary>
internal static class ChatServer
{
    public static WebApplication Build(ServerSettings settings, ICaseStore store, Func<InUse> inUse)
    {
        var builder = WebApplication.CreateSlimBuilder(
            new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.Logging.SetMinimumLevel(LogLevel.Warning);

        // A port that is taken is said in one line by whoever asked for it.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Listen(settings.Address, settings.Port);
        });

        // A page elsewhere that points its own name at this machine is turned away.
        builder.Services.Configure<HostFilteringOptions>(o => o.AllowedHosts = ["localhost", "127.0.0.1", "[::1]"]);
        builder.Services.AddSingleton(store);
        builder.Services.AddSingleton(inUse);
        builder.Services.AddSingleton(new CaseDesk(store, () => inUse().Responder));
        builder.Services.AddSingleton<IBot, AssistantBot>();
        builder.Services.AddSingleton<LocalChatAdapter>();
        builder.Services.AddSingleton<CaseEndpoints>();
        builder.Services.AddSingleton<PictureEndpoint>();
        builder.Services.AddSingleton<SummaryEndpoint>();
        Away.AddTo(builder.Services, settings.PageShelf);
        BotFront.AddTo(builder.Services, settings.ServiceUrls);
        Health.AddTo(builder.Services);
        Pace.AddTo(builder.Services, settings.Pace);
        Collector.AddTo(builder);
        return Map(builder.Build());
    }

    private static WebApplication Map(WebApplication app)
    {
        app.UseMiddleware<OneLineErrors>();
        app.UseHostFiltering();
        app.UseMiddleware<SafeHeaders>();
        app.UseMiddleware<SameOrigin>();
        app.UseRouting();
        app.UseRateLimiter();
        Pages.Map(app);
        app.Services.GetRequiredService<CaseEndpoints>().Map(app);
        app.Services.GetRequiredService<PictureEndpoint>().Map(app);
        app.Services.GetRequiredService<SummaryEndpoint>().Map(app);
        Away.Map(app);
        BotFront.Map(app);
        Health.Map(app);
        return app;
    }
}
