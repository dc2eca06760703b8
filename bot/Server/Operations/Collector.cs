using DxAssistant.Cases;
using OpenTelemetry;
using OpenTelemetry.Metrics;
using OpenTelemetry.Trace;

namespace DxAssistant.Server.Operations;

/// <summary>Sends traces and figures to the collector that the standard environment variables name, and to none without.</summary>
/// <remarks>Source, from memory: OpenTelemetry specification, OTLP exporter (OTEL_EXPORTER_OTLP_ENDPOINT).</remarks>
internal static class Collector
{
    private const string Endpoint = "OTEL_EXPORTER_OTLP_ENDPOINT";

    public static void AddTo(WebApplicationBuilder builder)
    {
        if (string.IsNullOrEmpty(builder.Configuration[Endpoint])) return;
        builder.Services.AddOpenTelemetry()
            .WithTracing(traces => traces.AddSource(Signals.Name).AddAspNetCoreInstrumentation())
            .WithMetrics(figures => figures.AddMeter(Signals.Name).AddAspNetCoreInstrumentation())
            .UseOtlpExporter();
    }
}
