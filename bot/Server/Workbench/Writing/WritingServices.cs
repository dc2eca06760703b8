using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>Writing pages over the web.</summary>
internal static class WritingServices
{
    /// <param name="pages">The folder of the pages; null where nobody writes.</param>
    /// <param name="proposals">The folder of proposals; null keeps them while the program runs.</param>
    public static void AddTo(IServiceCollection services, string? pages, string? proposals)
    {
        services.AddSingleton(_ => new PageDesk(pages));
        services.AddSingleton(parts => new ProposalDesk(
            parts.GetRequiredService<PageDesk>(), new ProposalStore(proposals), parts.GetRequiredService<AccountBook>(),
            TimeProvider.System, pages));
        services.AddSingleton<PageEndpoints>().AddSingleton<ProposalEndpoints>();
    }

    public static void Map(WebApplication app)
    {
        app.Services.GetRequiredService<PageEndpoints>().Map(app);
        app.Services.GetRequiredService<ProposalEndpoints>().Map(app);
    }
}
