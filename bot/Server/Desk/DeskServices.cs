using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Desk;

/// <summary>The parts of the warranty desk.</summary>
internal static class DeskServices
{
    /// <param name="books">What is kept beside the cases; null keeps it as long as the program runs.</param>
    /// <param name="news">Where changes are told; null tells nobody.</param>
    public static void AddTo(IServiceCollection services, DeskBooks? books, NewsSettings? news)
    {
        // As they are, so that a server that ends leaves them open: the next one may be given the same.
        var kept = books ?? DeskBooks.InMemory();
        services.AddSingleton(kept);
        services.AddSingleton(kept.Claims).AddSingleton(kept.Calls).AddSingleton(kept.Codes)
            .AddSingleton(kept.Requests);
        services.AddSingleton<CallEndpoints>();
        services.AddSingleton(parts => new ClaimDesk(
            parts.GetRequiredService<ICaseStore>(), parts.GetRequiredService<IClaimStore>(), TimeProvider.System,
            () => parts.GetRequiredService<Func<InUse>>()().Library
                ?? throw new CaseFileException("there are no pages, so there are no claims"),
            tells: news is not null));
        services.AddSingleton<ClaimPages>().AddSingleton<ClaimEndpoints>();
        services.AddSingleton<WorkEndpoints>();
        if (news is null) return;
        services.AddSingleton(parts => new NewsTeller(
            parts.GetRequiredService<IClaimStore>(), news, Plain(), TimeProvider.System));
        services.AddHostedService<NewsRound>();
    }

    // What is signed for one address is not carried to another.
    private static HttpClient Plain() =>
        new(new SocketsHttpHandler { AllowAutoRedirect = false }) { Timeout = TimeSpan.FromSeconds(10) };

    public static void Map(WebApplication app)
    {
        app.Services.GetRequiredService<ClaimEndpoints>().Map(app);
        app.Services.GetRequiredService<WorkEndpoints>().Map(app);
        app.Services.GetRequiredService<CallEndpoints>().Map(app);
    }
}
