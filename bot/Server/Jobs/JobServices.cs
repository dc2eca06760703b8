using DxAssistant.Cases;
using DxAssistant.Cases.Jobs;
using DxAssistant.Server.HandOver;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Jobs;

/// <summary>The parts that keep a job beside its walk.</summary>
internal static class JobServices
{
    public static void AddTo(IServiceCollection services) => services
        .AddSingleton(parts => new JobDesk(
            parts.GetRequiredService<ICaseStore>(), TimeProvider.System,
            () => parts.GetRequiredService<Func<InUse>>()().Library))
        .AddSingleton(parts => new EarlierDesk(
            parts.GetRequiredService<ICaseStore>(), parts.GetRequiredService<CaseDesk>(), TimeProvider.System))
        .AddSingleton(new SerialPace(TimeProvider.System)).AddSingleton<SerialLook>().AddSingleton<JobEndpoints>()
        .AddSingleton<PhotoEndpoints>()
        .AddSingleton<HandOverBook>().AddSingleton<HandOverEndpoints>().AddSingleton<ChangeEndpoint>();

    public static void Map(WebApplication app)
    {
        app.Services.GetRequiredService<JobEndpoints>().Map(app);
        app.Services.GetRequiredService<PhotoEndpoints>().Map(app);
        app.Services.GetRequiredService<HandOverEndpoints>().Map(app);
        app.Services.GetRequiredService<ChangeEndpoint>().Map(app);
    }
}
