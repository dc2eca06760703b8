using System.Globalization;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

/// <summary>Tables of messages and what they must be taken for, one a line: <c>context | message | result</c>.</summary>
/// <remarks>
/// A result is readings (<c>U–V=1.1 Ω; 24 °C</c>, OPEN, SHORT; after <c>??</c> what is unclear beside them), ASK with the
/// reason and the meanings offered, or NONE with the reason.
/// </remarks>
internal static class ReadingTable
{
    private static readonly QuantityKind Ohms = QuantityKind.Resistance;

    public static TheoryData<string, string, string> Of(string table)
    {
        var rows = new TheoryData<string, string, string>();
        foreach (string line in table.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            string[] cells = line.Split(" | ", 2, StringSplitOptions.TrimEntries);
            string[] halves = cells[^1].Split("=>", StringSplitOptions.TrimEntries);
            rows.Add(cells[0], halves[0], halves[1]);
        }
        return rows;
    }

    public static ReadingContext Context(string name) => name switch
    {
        "-" => ReadingContext.None,
        "us" => new() { Market = Market.FahrenheitPsi },
        "eu" => new() { Market = Market.CelsiusKilopascal },
        "sensor" => new() { Asked = Ohms, DefaultUnit = Units.KiloOhm, Possible = new(100, 500_000) },
        "windings" => new() { Asked = Ohms, DefaultUnit = Units.Ohm, Possible = new(0, 1_000), Labels = ["U–V", "V–W", "U–W"] },
        "lines" => new() { Asked = QuantityKind.Voltage, DefaultUnit = Units.Volt, Possible = new(0, 600), Labels = ["L1", "L2"] },
        "volts" => new() { Asked = QuantityKind.Voltage, DefaultUnit = Units.Volt, Possible = new(0, 600) },
        "temperature-us" => ReadingContext.For(QuantityKind.Temperature, Market.FahrenheitPsi),
        "temperature-eu" => ReadingContext.For(QuantityKind.Temperature, Market.CelsiusKilopascal),
        "gauges-us" => ReadingContext.For(QuantityKind.GaugePressure, Market.FahrenheitPsi),
        "gauges-eu" => ReadingContext.For(QuantityKind.GaugePressure, Market.CelsiusKilopascal),
        _ => AskedQuantity.TryContext(name, out ReadingContext? context) ? context : throw new ArgumentException($"no context {name}", nameof(name)),
    };

    public static string Show(ReadingResult result) => result switch
    {
        ReadingResult.Readings taken => string.Join("; ", taken.List.Select(Show)) + (taken.Unclear is null ? "" : " ?? " + Show(taken.Unclear)),
        ReadingResult.AskBack ask => $"ASK {ask.Reason} [{string.Join(" | ", ask.Meanings.Select(meaning => string.Join("; ", meaning.Readings.Select(Show))))}]",
        ReadingResult.NotUnderstood none => $"NONE {none.Reason}",
        _ => throw new ArgumentException("a fourth kind of result", nameof(result)),
    };

    private static string Show(Reading reading) => (reading.Label is null ? "" : reading.Label + "=") + reading.State switch
    {
        ReadingState.OpenCircuit => "OPEN",
        ReadingState.ShortCircuit => "SHORT",
        _ => $"{reading.Unit.FromSi(reading.Value).ToString("0.######", CultureInfo.InvariantCulture)} {reading.Unit.Symbol}",
    };
}
