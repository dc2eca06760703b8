using DxAssistant.Cases;
using DxAssistant.Cases.Brought;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Offline;

/// <summary>Work without signal: what is handed out for it, and what comes back.</summary>
internal static class Away
{
    /// <param name="folder">
    /// Where the pages that were taken along are kept; null keeps them while the program runs.
    /// </param>
    public static void AddTo(IServiceCollection services, string? folder)
    {
        services.AddSingleton(provider => new PageShelf(provider.GetRequiredService<Func<InUse>>(), folder));
        services.AddSingleton(provider => new BroughtDesk(
            provider.GetRequiredService<ICaseStore>(), provider.GetRequiredService<PageShelf>().Find));
        services.AddSingleton<OfflineEndpoints>();
        services.AddSingleton<BroughtEndpoints>();
    }

    public static void Map(WebApplication app)
    {
        app.Services.GetRequiredService<OfflineEndpoints>().Map(app);
        app.Services.GetRequiredService<BroughtEndpoints>().Map(app);
        PageKeeper.Map(app);
    }
}
