using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Pictures;
using DxAssistant.Knowledge.Tests.Content;
using DxAssistant.Knowledge.Tests.Judging;

namespace DxAssistant.Knowledge.Tests.Pictures;

/// <summary>Verdicts to draw, at least one of each judge, with the words of the shipped phrase file.</summary>
internal sealed class PictureCases : IPictureWords
{
    private const string Sensor = "curve = AT-10k-3435; tolerance = 2 K; meter = 1 % + 3 × 0.01 kΩ; thermometer = 1 K";
    private const string Line =
        "refrigerant = R-410A; low = 3 K; high = 8 K; altitude = 0 m; gauge = 20 kPa; thermometer = 1 K";
    private const string Winding = "limit = 5 %; meter = 0.5 % + 2 × 0.001 Ω";
    private const string Diodes = "low = 0.3 V; high = 0.7 V; spread = 0.05 V; meter = 1 % + 2 × 0.001 V";
    private const string Split = "nominal = 240 V; below = 5 %; above = 5 %; meter = 0.7 % + 2 × 0.1 V";

    private static readonly PhraseBook Phrases =
        ContentCompiler.Compile(RepositoryFolder.Read("content")).Library!.Phrases;

    public static PictureCases Words { get; } = new();

    /// <summary>Name, judge, inputs, readings.</summary>
    public static IReadOnlyList<(string Name, string Judge, string Inputs, string[] Readings)> All { get; } =
    [
        ("band-low", "band", "low = 4.5 V; high = 5.5 V; meter = 1 % + 2 × 0.01 V", ["5 V supply: 3.9 V"]),
        ("capacitor-low", "capacitor", "rated = 35 µF; tolerance = 6 %; frequency = 60 Hz; meter = 2 % + 5 × 0.01 A",
            ["current: 3.9 A", "voltage: 371 V"]),
        ("continuity-open", "continuity", "closed = 2 Ω; open = 10 kΩ; meter = 1 % + 3 × 0.1 Ω", [Ask.Open]),
        ("dc-bus-low", "dc-bus", "tolerance = 10 %; meter = 1 % + 2 × 1 V", ["supply: 230 V", "bus: 250 V"]),
        ("insulation-cold", "insulation-corrected", "minimum = 5 MΩ; meter = 5 % + 2 × 0.1 MΩ; thermometer = 1 K",
            ["insulation: 100 MΩ", "winding: 77 °F"]),
        ("insulation-one", "insulation", "minimum = 2 MΩ; meter = 5 % + 2 × 0.1 MΩ", ["winding to ground: 210 MΩ"]),
        ("insulation-three-low", "insulation", "minimum = 2 MΩ; meter = 5 % + 2 × 0.1 MΩ",
            ["U to ground: 0.4 MΩ", "V to ground: 180 MΩ", "W to ground: 200 MΩ"]),
        ("module-within", "module-diodes", Diodes,
            ["P–U: 0.452 V", "P–V: 0.449 V", "P–W: 0.455 V", "N–U: 0.461 V", "N–V: 0.458 V", "N–W: 0.46 V"]),
        ("module-short", "module-diodes", Diodes,
            ["P–U: 0.452 V", "P–V: 0.003 V", "P–W: 0.455 V", "N–U: 0.461 V", "N–V: 0.458 V", Ask.Open]),
        ("polar-reversed", "polar-band", "low = 10 V; high = 14 V; meter = 1 % + 2 × 0.1 V", ["-12 V"]),
        ("saturation-split-high", "saturation-split",
            "refrigerant = R-410A; low = 8 K; high = 17 K; altitude = 0 m; gauge = 40 kPa; thermometer = 1 K",
            ["high side: 450 psig", "outdoor air: 35 °C"]),
        ("sensor-low", "thermistor-curve", Sensor, ["resistance: 2.1 kΩ", "temperature: 24 °C"]),
        ("sensor-open", "thermistor-curve", Sensor, [Ask.Open, "temperature: 24 °C"]),
        ("sensor-within", "thermistor-curve", Sensor, ["resistance: 10.1 kΩ", "temperature: 77 °F"]),
        ("signal-still", "signal-swing", "swing = 20 V; meter = 1 % + 3 × 0.1 V", ["lowest: 24 V", "highest: 26 V"]),
        ("split-neutral", "split-supply", Split, ["L1–L2: 240 V", "L1–ground: 150 V", "L2–ground: 90 V"]),
        ("split-within", "split-supply", Split, ["L1–L2: 238 V", "L1–ground: 119 V", "L2–ground: 119 V"]),
        ("subcooling-low", "subcooling", Line, ["liquid pressure: 2500 kPa", "liquid line: 41 °C"]),
        ("superheat-high", "superheat", Line, ["suction pressure: 118 psig", "suction line: 63 °F"]),
        ("supply-low", "supply-limits", "nominal = 230 V; below = 10 %; above = 10 %; meter = 0.7 % + 2 × 0.1 V",
            ["voltage: 198 V"]),
        ("temperature-drop-reversed", "temperature-drop", "low = 8 K; high = 14 K; reversed = 1.5 K; thermometer = 1 K",
            ["return air: 24 °C", "supply air: 33 °C"]),
        ("temperature-rise-within", "temperature-rise", "low = 12 K; high = 28 K; reversed = 1.5 K; thermometer = 1 K",
            ["return air: 20 °C", "supply air: 38 °C"]),
        ("temperature-split-low", "temperature-split", "low = 8 K; high = 14 K; thermometer = 1 K",
            ["return air: 26 °C", "supply air: 21 °C"]),
        ("unbalance-high", "voltage-unbalance", "limit = 2 %; meter = 0.7 % + 2 × 0.1 V",
            ["L1–L2: 402 V", "L2–L3: 398 V", "L3–L1: 362 V"]),
        ("unbalance-lost", "voltage-unbalance", "limit = 2 %; meter = 0.7 % + 2 × 0.1 V",
            ["L1–L2: 400 V", "L2–L3: 205 V", "L3–L1: 200 V"]),
        ("windings-open", "winding-balance", Winding, [Ask.Open, "V–W: 1.01 Ω", Ask.Open]),
        ("windings-open-nominal", "winding-balance", Winding + "; nominal = 1.10 Ω",
            ["U–V: 1.1 Ω", Ask.Open, Ask.Open]),
        ("windings-unequal", "winding-balance", Winding, ["U–V: 0.98 Ω", "V–W: 1.1 Ω", "U–W: 0.99 Ω"]),
    ];

    public static Drawn? Draw(string name)
    {
        var (_, judge, inputs, readings) = All.Single(known => known.Name == name);
        return Draw(judge, inputs, readings);
    }

    public static Drawn? Draw(string judge, string inputs, params string[] readings)
    {
        JudgeRequest request = Ask.Request(judge, inputs, readings);
        return VerdictPictures.Of(
            new VerdictFacts(judge, "Test of a part", request, JudgeCatalogue.All[judge].Judge(request)), Words);
    }

    public string Say(string phrase, params ReadOnlySpan<(string Slot, string Text)> slots)
    {
        string text = Phrases.Template(phrase);
        foreach ((string slot, string filled) in slots)
        {
            text = text.Replace("{" + slot + "}", filled, StringComparison.Ordinal);
        }

        return text;
    }
}
