using DxAssistant.Cases;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace DxAssistant.Server.Operations;

/// <summary>Whether the store of cases answers.</summary>
internal sealed class CasesCanBeRead(ICaseStore store) : IHealthCheck
{
    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context,
        CancellationToken cancel = default)
    {
        try
        {
            await store.ListAsync(1, cancel);
            return HealthCheckResult.Healthy();
        }
        catch (CaseFileException error)
        {
            return HealthCheckResult.Unhealthy(error.Message);
        }
    }
}
