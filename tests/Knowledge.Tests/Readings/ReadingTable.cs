using System.Globalization;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

/// <summary>Tables of messages and what they must be taken for: context, bar, message, arrow, result.</summary>
/// <remarks>
/// A result is readings (<c>U–V=1.1 Ω; 24 °C</c>, OPEN, SHORT; after <c>??</c> what is unclear beside them),
/// ASK with the reason and the meanings offered, or NONE with the reason.
/// </remarks>
internal static class ReadingTable
{
    private const QuantityKind Ohms = QuantityKind.Resistance;

    private const QuantityKind Volts = QuantityKind.Voltage;

    private static readonly ReadingContext Sensor =
        new() { Asked = Ohms, DefaultUnit = Units.KiloOhm, Possible = new(100, 500_000) };

    private static readonly ReadingContext Windings =
        new() { Asked = Ohms, DefaultUnit = Units.Ohm, Possible = new(0, 1_000), Labels = ["U–V", "V–W", "U–W"] };

    private static readonly ReadingContext Supply =
        new() { Asked = Volts, DefaultUnit = Units.Volt, Possible = new(0, 600) };

    public static TheoryData<string, string, string> Of(string table)
    {
        var rows = new TheoryData<string, string, string>();
        const StringSplitOptions trimmed = StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries;
        foreach (string line in table.Split('\n', trimmed))
        {
            string[] cells = line.Split(" | ", 2, trimmed);
            string[] halves = cells[1].Split("=>", trimmed);
            rows.Add(cells[0], halves[0], halves[1]);
        }
        return rows;
    }

    public static ReadingContext Context(string name) => name switch
    {
        "-" => ReadingContext.None,
        "us" => new() { Market = Market.FahrenheitPsi },
        "eu" => new() { Market = Market.CelsiusKilopascal },
        "sensor" => Sensor,
        "windings" => Windings,
        "lines" => Supply with { Labels = ["L1", "L2"] },
        "volts" => Supply,
        "temperature-us" => ReadingContext.For(QuantityKind.Temperature, Market.FahrenheitPsi),
        "temperature-eu" => ReadingContext.For(QuantityKind.Temperature, Market.CelsiusKilopascal),
        "gauges-us" => ReadingContext.For(QuantityKind.GaugePressure, Market.FahrenheitPsi),
        "gauges-eu" => ReadingContext.For(QuantityKind.GaugePressure, Market.CelsiusKilopascal),
        _ when ReadingForms.Find(name) is { } form => form,
        _ when AskedQuantity.TryContext(name, out ReadingContext? context) => context,
        _ => throw new ArgumentException($"no context {name}", nameof(name)),
    };

    public static string Show(ReadingResult result) => result switch
    {
        ReadingResult.Readings { Unclear: { } unclear } taken =>
            $"{Show(taken.List)} ?? {Show((ReadingResult)unclear)}",
        ReadingResult.Readings taken => Show(taken.List),
        ReadingResult.AskBack ask => $"ASK {ask.Reason} [{Meanings(ask)}]",
        ReadingResult.NotUnderstood none => $"NONE {none.Reason}",
        _ => throw new ArgumentException("a fourth kind of result", nameof(result)),
    };

    private static string Meanings(ReadingResult.AskBack ask) =>
        string.Join(" | ", ask.Meanings.Select(meaning => Show(meaning.Readings)));

    private static string Show(IEnumerable<Reading> readings) => string.Join("; ", readings.Select(Show));

    private static string Show(Reading reading)
    {
        string value = reading.Unit.FromSi(reading.Value).ToString("0.######", CultureInfo.InvariantCulture);
        string shown = reading.State switch
        {
            ReadingState.OpenCircuit => "OPEN",
            ReadingState.ShortCircuit => "SHORT",
            _ => $"{value} {reading.Unit.Symbol}",
        };
        return reading.Label is null ? shown : $"{reading.Label}={shown}";
    }
}
