using DxAssistant.Cases;
using DxAssistant.Cases.Calls;
using DxAssistant.Cases.Claims;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Desk;

/// <summary>The parts of the warranty desk.</summary>
internal static class DeskServices
{
    /// <param name="claims">Where claims are kept; null keeps them as long as the program runs.</param>
    /// <param name="news">Where changes are told; null tells nobody.</param>
    /// <param name="calls">Where calls put aside are kept; null keeps them as long as the program runs.</param>
    public static void AddTo(IServiceCollection services, IClaimStore? claims, ICallBook? calls, NewsSettings? news)
    {
        services.AddSingleton(_ => calls ?? SqlCallBook.InMemory());
        services.AddSingleton<CallEndpoints>();
        services.AddSingleton(_ => claims ?? SqlClaimStore.InMemory());
        services.AddSingleton(parts => new ClaimDesk(
            parts.GetRequiredService<ICaseStore>(), parts.GetRequiredService<IClaimStore>(), TimeProvider.System,
            () => parts.GetRequiredService<Func<InUse>>()().Library ?? throw new CaseFileException("there are no pages, so there are no claims"),
            tells: news is not null));
        services.AddSingleton<ClaimEndpoints>();
        services.AddSingleton<WorkEndpoints>();
        if (news is null) return;
        services.AddSingleton(parts => new NewsTeller(
            parts.GetRequiredService<IClaimStore>(), news, new HttpClient { Timeout = TimeSpan.FromSeconds(10) }, TimeProvider.System));
        services.AddHostedService<NewsRound>();
    }

    public static void Map(WebApplication app)
    {
        app.Services.GetRequiredService<ClaimEndpoints>().Map(app);
        app.Services.GetRequiredService<WorkEndpoints>().Map(app);
        app.Services.GetRequiredService<CallEndpoints>().Map(app);
    }
}
