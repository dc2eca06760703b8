using System.Diagnostics;
using DxAssistant.Cases;
using OpenTelemetry;
using OpenTelemetry.Metrics;
using OpenTelemetry.Trace;

namespace DxAssistant.Server.Operations;

/// <summary>
/// Sends traces and figures to the collector that the standard environment variables name, and to none without.
/// </summary>
/// <remarks>Source, from memory: OpenTelemetry specification, OTLP exporter (OTEL_EXPORTER_OTLP_ENDPOINT).</remarks>
internal static class Collector
{
    private const string Endpoint = "OTEL_EXPORTER_OTLP_ENDPOINT";

    public static void AddTo(WebApplicationBuilder builder)
    {
        if (string.IsNullOrEmpty(builder.Configuration[Endpoint])) return;
        builder.Services.AddOpenTelemetry()
            .WithTracing(traces => traces.AddSource(Signals.Name)
                .AddAspNetCoreInstrumentation(requests => requests.EnrichWithHttpResponse = WithoutNames))
            .WithMetrics(figures => figures.AddMeter(Signals.Name).AddAspNetCoreInstrumentation())
            .UseOtlpExporter();
    }

    // An address may name a case or a person; which of the program's addresses it is stands beside it, as a pattern.
    private static void WithoutNames(Activity request, HttpResponse _) =>
        request.SetTag("url.path", null).SetTag("url.query", null);
}
