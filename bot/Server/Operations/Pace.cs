using System.Globalization;
using System.Threading.RateLimiting;
using DxAssistant.Server.Chat;
using Microsoft.AspNetCore.RateLimiting;

namespace DxAssistant.Server.Operations;

/// <summary>How fast one client may ask. A person never meets it; a loop that ran away does.</summary>
internal static class Pace
{
    /// <summary>What a client may ask in a second, on average, unless the operator says otherwise.</summary>
    public const int Usual = 100;

    private const int SecondsSaved = 5;

    /// <param name="perSecond">Requests a second and client, 1 or more; 0 for no limit.</param>
    public static void AddTo(IServiceCollection services, int perSecond) => services.AddRateLimiter(options =>
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.OnRejected = (rejected, cancel) => SayAsync(rejected);
        if (perSecond > 0)
            options.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(http => Bucket(http, perSecond));
    });

    private static RateLimitPartition<string> Bucket(HttpContext http, int perSecond) =>
        RateLimitPartition.GetTokenBucketLimiter(ClientOf(http), _ => new TokenBucketRateLimiterOptions
        {
            TokenLimit = perSecond * SecondsSaved,
            TokensPerPeriod = perSecond,
            ReplenishmentPeriod = TimeSpan.FromSeconds(1),
            QueueLimit = 0,
        });

    private static string ClientOf(HttpContext http) =>
        http.User.Identity?.Name ?? http.Connection.RemoteIpAddress?.ToString() ?? "";

    private static async ValueTask SayAsync(OnRejectedContext rejected)
    {
        rejected.HttpContext.Response.Headers.RetryAfter = 1.ToString(CultureInfo.InvariantCulture);
        await Refusal.Because(
            StatusCodes.Status429TooManyRequests,
            "Too many requests at once. Nothing was changed; wait a second, then try again.")
            .ExecuteAsync(rejected.HttpContext);
    }
}
