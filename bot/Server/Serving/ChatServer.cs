using System.Security.Authentication;
using DxAssistant.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Api;
using DxAssistant.Server.Channels;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Content;
using DxAssistant.Server.Desk;
using DxAssistant.Server.HandOver;
using DxAssistant.Server.Jobs;
using DxAssistant.Server.Offline;
using DxAssistant.Server.Operations;
using DxAssistant.Server.Privacy;
using DxAssistant.Server.Summary;
using DxAssistant.Server.Workbench.Writing;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.HttpOverrides;
using Microsoft.Bot.Builder;

namespace DxAssistant.Server.Serving;

/// <summary>Puts the parts together: pages, the web chat's requests, the bot's front.</summary>
internal static class ChatServer
{
    private const SslProtocols Protocols = SslProtocols.Tls12 | SslProtocols.Tls13;

    /// <param name="book">Who may sign in; null for nobody, so that the program is this machine's own.</param>
    /// <param name="books">What is kept beside the cases; null keeps it as long as the program runs.</param>
    public static WebApplication Build(
        ServerSettings settings, ICaseStore store, Func<InUse> inUse, AccountBook? book = null, DeskBooks? books = null)
    {
        book ??= SqliteAccounts.InMemory(TimeProvider.System);
        var builder = WebApplication.CreateSlimBuilder(
            new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.Logging.SetMinimumLevel(LogLevel.Warning);

        // A port that is taken is said in one line by whoever asked for it.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);

        // That keys of sessions lie unencrypted in the book of accounts is decided (THREATS.md), and no news at each
        // new key.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection.KeyManagement.XmlKeyManager", LogLevel.Error);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Listen(settings.Address, settings.Port, listen =>
            {
                if (settings.Certificate is { } file)
                    listen.UseHttps(file, Environment.GetEnvironmentVariable("DX_CERTIFICATE_PASSWORD"),
                        https => https.SslProtocols = Protocols);
            });
        });

        // A page elsewhere that points its own name at this machine is turned away.
        builder.Services.Configure<HostFilteringOptions>(o => o.AllowedHosts =
            ["localhost", "127.0.0.1", "[::1]", .. settings.Hosts]);
        builder.Services.Configure<ForwardedHeadersOptions>(o => o.ForwardedHeaders =
            settings.BehindProxy
                ? ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto
                : ForwardedHeaders.None);
        var bell = new CaseBell(store.News);
        if (store.News is { } news) builder.Services.AddHostedService(_ => new FarBell(news, bell));
        store = new HeardStore(store, bell);
        builder.Services.AddSingleton(bell).AddSingleton(store);
        builder.Services.AddSingleton(inUse);
        builder.Services.AddSingleton(new CaseDesk(store, () => inUse().Responder));
        builder.Services.AddSingleton(TimeProvider.System);
        Schemes.AddTo(builder.Services, book, settings);
        builder.Services.AddSingleton<AccountDesk>().AddSingleton<AccountEndpoints>().AddSingleton<SessionEndpoints>();
        builder.Services.AddSingleton<IBot, AssistantBot>();
        builder.Services.AddSingleton<LocalChatAdapter>();
        builder.Services.AddSingleton<RequestKeys>().AddSingleton<ContentEndpoints>().AddSingleton<CaseEndpoints>();
        ApiDescription.AddTo(builder.Services);
        builder.Services.AddSingleton<PictureEndpoint>();
        builder.Services.AddSingleton<SummaryEndpoint>();
        Pages.AddTo(builder.Services);
        Away.AddTo(builder.Services, settings.PageShelf);
        JobServices.AddTo(builder.Services);
        DeskServices.AddTo(builder.Services, books, settings.News);
        PrivacyServices.AddTo(builder.Services, settings);
        WritingServices.AddTo(builder.Services, settings.PagesFolder, settings.Proposals);
        BotFront.AddTo(builder.Services, settings.ServiceUrls);
        Health.AddTo(builder.Services);
        Pace.AddTo(builder.Services, settings.Pace);
        Collector.AddTo(builder);
        return Map(builder.Build());
    }

    private static WebApplication Map(WebApplication app)
    {
        app.UseForwardedHeaders();
        app.UseMiddleware<OneLineErrors>();
        BareStatus.Map(app);
        app.UseHostFiltering();
        app.UseMiddleware<SafeHeaders>();
        app.UseMiddleware<SameOrigin>();
        app.UseRouting();
        Pages.MapFiles(app);
        app.UseAuthentication();
        app.UseRateLimiter();
        app.UseMiddleware<DoorKeeper>();
        Pages.Map(app);
        app.Services.GetRequiredService<SessionEndpoints>().Map(app);
        CompanySignIn.Map(app);
        app.Services.GetRequiredService<AccountEndpoints>().Map(app);
        ApiDescription.Map(app);
        app.Services.GetRequiredService<ContentEndpoints>().Map(app);
        app.Services.GetRequiredService<CaseEndpoints>().Map(app);
        app.Services.GetRequiredService<PictureEndpoint>().Map(app);
        app.Services.GetRequiredService<SummaryEndpoint>().Map(app);
        JobServices.Map(app);
        DeskServices.Map(app);
        PrivacyServices.Map(app);
        WritingServices.Map(app);
        Away.Map(app);
        BotFront.Map(app);
        Health.Map(app);
        return app;
    }
}
