using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Server.Commands.Scoring;

/// <summary>Compares a reading that was answered with one that was expected.</summary>
internal static class ExpectedReading
{
    // A number is copied, not measured: only the last bits of a conversion may differ.
    private const double Share = 1e-6;

    /// <summary>As many readings as expected, each in its place or, where they differ in kind, in any.</summary>
    public static bool AreAll(ImmutableArray<JsonElement> expected, JsonArray readings)
    {
        var left = expected.ToList();
        foreach (var reading in readings)
        {
            int at = left.FindIndex(one => Is(one, reading!));
            if (at < 0) return false;
            left.RemoveAt(at);
        }

        return left.Count == 0;
    }

    public static bool Is(JsonElement expected, JsonNode reading) =>
        OfOneKind(Request.Text(expected, "quantity"), (string)reading["quantity"]!)
        && (Request.OptionalText(expected, "label") is not { } label
            || Plain(label) == Plain((string?)reading["label"]))
        && (expected.TryGetProperty("value", out var value) ? IsNumber(value.GetDouble(), reading)
            : Request.Text(expected, "state") == (string)reading["state"]!);

    // A dash is a dash, however long.
    private static string? Plain(string? label) => label?.Replace('–', '-');

    private static bool IsNumber(double expected, JsonNode reading) => reading["value"] is { } value
        && Math.Abs((double)value - expected) <= Share * Math.Max(1e-9, Math.Abs(expected));

    // A pressure without a word about its zero may be answered as the one that was asked.
    private static bool OfOneKind(string expected, string answered) => expected == answered
        || (expected == "pressure" && answered is "gauge-pressure" or "absolute-pressure")
        || (answered == "pressure" && expected is "gauge-pressure" or "absolute-pressure");
}
