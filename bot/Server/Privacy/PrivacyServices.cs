using DxAssistant.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Personal;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Privacy;

/// <summary>The parts that look after what is kept about people.</summary>
internal static class PrivacyServices
{
    public static void AddTo(IServiceCollection services, ServerSettings settings)
    {
        services.AddSingleton(settings);
        services.AddSingleton(parts => new PersonalDesk(
            parts.GetRequiredService<ICaseStore>(), parts.GetRequiredService<DeskBooks>(),
            parts.GetRequiredService<AccountBook>(), TimeProvider.System));
        services.AddSingleton<PrivacyEndpoints>();
        if (settings.KeepPersonal is not { } days) return;
        services.AddSingleton(parts => new Retention(
            parts.GetRequiredService<ICaseStore>(), parts.GetRequiredService<DeskBooks>(), TimeSpan.FromDays(days),
            TimeProvider.System));
        services.AddHostedService<RetentionRound>();
    }

    public static void Map(WebApplication app) => app.Services.GetRequiredService<PrivacyEndpoints>().Map(app);
}
