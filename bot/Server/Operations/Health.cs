using DxAssistant.Cases;
using Microsoft.AspNetCore.Diagnostics.HealthChecks;

namespace DxAssistant.Server.Operations;

/// <summary>Tells a supervisor whether the program runs, and whether it can take turns.</summary>
internal static class Health
{
    /// <summary>Answers as long as the program answers at all.</summary>
    public const string Running = "/api/health/running";

    /// <summary>Answers 200 while cases can be read, 503 otherwise.</summary>
    public const string Ready = "/api/health/ready";

    public static void AddTo(IServiceCollection services) =>
        services.AddHealthChecks().AddCheck<CasesCanBeRead>("cases");

    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapHealthChecks(Running, new HealthCheckOptions { Predicate = _ => false });
        routes.MapHealthChecks(Ready);
    }
}
