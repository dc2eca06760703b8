using System.Collections.Frozen;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Tests.Judging;

/// <summary>One sound request for each judge, written as a page and a technician would.</summary>
internal static class GoodRequests
{
    public static FrozenDictionary<string, string> Inputs { get; } = new Dictionary<string, string>
    {
        ["band"] = "low = 41 Ω; high = 51 Ω; meter = 1 % + 3 × 0.1 Ω",
        ["capacitor"] = "rated = 35 µF; tolerance = 6 %; frequency = 60 Hz; meter = 2 %",
        ["continuity"] = "closed = 2 Ω; open = 10 kΩ; meter = 1 % + 3 × 0.1 Ω",
        ["dc-bus"] = "tolerance = 8 %; meter = 1 % + 2 × 1 V",
        ["insulation"] = "minimum = 1 MΩ; meter = 5 % + 2 × 0.01 MΩ",
        ["insulation-corrected"] = "minimum = 5 MΩ; meter = 5 % + 2 × 0.1 MΩ; thermometer = 1 K",
        ["module-diodes"] = "low = 0.3 V; high = 0.7 V; spread = 0.05 V; meter = 1 % + 2 × 0.001 V",
        ["polar-band"] = "low = 10.5 V; high = 13.5 V; meter = 0.5 % + 2 × 0.01 V",
        ["saturation-split"] =
            "refrigerant = R32; low = -24 K; high = -12 K; altitude = 0 m; gauge = 20 kPa; thermometer = 1 K",
        ["signal-swing"] = "swing = 10 V; meter = 1 % + 3 × 0.1 V",
        ["split-supply"] = "nominal = 240 V; below = 5 %; above = 5 %; meter = 1 % + 3 × 0.1 V",
        ["subcooling"] =
            "refrigerant = R-410A; low = 3 K; high = 8 K; altitude = 0 m; gauge = 20 kPa; thermometer = 1 K",
        ["superheat"] =
            "refrigerant = R-454B; low = 3 K; high = 8 K; altitude = 0 m; gauge = 20 kPa; thermometer = 1 K",
        ["supply-limits"] = "nominal = 230 V; below = 10 %; above = 10 %; meter = 1 % + 3 × 0.1 V",
        ["temperature-drop"] = "low = 8 K; high = 14 K; reversed = 1.5 K; thermometer = 1 K",
        ["temperature-rise"] = "low = 12 K; high = 28 K; reversed = 1.5 K; thermometer = 1 K",
        ["temperature-split"] = "low = 8 K; high = 14 K; thermometer = 1 K",
        ["thermistor-curve"] = "curve = AT-10k-3435; tolerance = 2 K; meter = 1 % + 3 × 0.01 kΩ; thermometer = 1 K",
        ["voltage-unbalance"] = "limit = 3 %; meter = 0.7 % + 2 × 0.1 V",
        ["winding-balance"] = "limit = 5 %; meter = 0.5 % + 2 × 0.001 Ω; nominal = 1.1 Ω",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Readings of a healthy unit, in the order the judge wants them.</summary>
    public static FrozenDictionary<string, string[]> Readings { get; } = new Dictionary<string, string[]>
    {
        ["band"] = ["46 Ω"],
        ["capacitor"] = ["4.1 A", "310 V"],
        ["continuity"] = ["0.4 Ω"],
        ["dc-bus"] = ["231 V", "325 V"],
        ["insulation"] = ["25 MΩ"],
        ["insulation-corrected"] = ["100 MΩ", "25 °C"],
        ["module-diodes"] = ["0.45 V", "0.45 V", "0.46 V", "0.45 V", "0.44 V", "0.45 V"],
        ["polar-band"] = ["12 V"],
        ["saturation-split"] = ["850 kPa_gauge", "22 °C"],
        ["signal-swing"] = ["8 V", "31 V"],
        ["split-supply"] = ["240 V", "120 V", "120 V"],
        ["subcooling"] = ["2500 kPa_gauge", "36 °C"],
        ["superheat"] = ["800 kPa_gauge", "10 °C"],
        ["supply-limits"] = ["231 V"],
        ["temperature-drop"] = ["25 °C", "14 °C"],
        ["temperature-rise"] = ["20 °C", "40 °C"],
        ["temperature-split"] = ["25 °C", "14 °C"],
        ["thermistor-curve"] = ["11.9 kΩ", "20 °C"],
        ["voltage-unbalance"] = ["460 V", "461 V", "459 V"],
        ["winding-balance"] = ["1.10 Ω", "1.10 Ω", "1.10 Ω"],
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static JudgeRequest Of(string name) => Ask.Request(name, Inputs[name], Readings[name]);
}
