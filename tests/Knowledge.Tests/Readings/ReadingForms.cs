using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

/// <summary>Forms as checks ask them, by the names that the tables use.</summary>
internal static class ReadingForms
{
    private const Market American = Market.FahrenheitPsi;
    private const Market European = Market.CelsiusKilopascal;

    public static ReadingContext? Find(string name) => name switch
    {
        "room-sensor" => ReadingContext.ForForm(RoomSensor, European),
        "room-sensor-us" => ReadingContext.ForForm(RoomSensor, American),
        "superheat-form" => ReadingContext.ForForm(Superheat, European),
        "superheat-form-us" => ReadingContext.ForForm(Superheat, American),
        "split-us" => ReadingContext.ForForm(
            [Degrees("Return air", -10, 50), Degrees("Supply air", -20, 70)], American),
        "split" => ReadingContext.ForForm([Degrees("Return air", -10, 50), Degrees("Supply air", -20, 70)], European),
        "bend" => ReadingContext.ForForm([Degrees("Outdoor air", -30, 60), Degrees("Middle bend", -30, 75)], European),
        "high-side-us" => ReadingContext.ForForm(HighSide, American),
        "bus" => ReadingContext.ForForm([Volts("Supply", 0, 480), Volts("DC bus", 0, 800)]),
        "legs" => ReadingContext.ForForm(
            [Volts("L1–L2", 0, 480), Volts("L1–ground", 0, 300), Volts("L2–ground", 0, 300)]),
        "diodes" => ReadingContext.ForForm("P–U P–V P–W N–U N–V N–W".Split(' ').Select(label => Volts(label, 0, 3))),
        "signal" => ReadingContext.ForForm([Volts("lowest signal", -100, 400), Volts("highest signal", -100, 400)]),
        "megger" => ReadingContext.ForForm([new("Winding to shell", Units.MegaOhm, new(0, 1e11))]),
        "pipe-us" => ReadingContext.ForForm([Degrees("Discharge pipe", -30, 180)], American),
        "celsius-field-us" =>
            ReadingContext.For(QuantityKind.Temperature, American) with { DefaultUnit = Units.Celsius },
        _ => null,
    };

    private static AskedField[] RoomSensor =>
        [new("resistance", Units.KiloOhm, new(0, 2e6)), Degrees("temperature", -20, 60)];

    private static AskedField[] Superheat =>
        [new("Suction", Units.KiloPascal, new(-101e3, 3e6)), Degrees("Suction pipe", -40, 60)];

    private static AskedField[] HighSide =>
        [new("High side", Units.KiloPascal, new(0, 5e6)), Degrees("Outdoor air", -30, 60)];

    private static AskedField Volts(string label, double least, double most) =>
        new(label, Units.Volt, new PossibleRange(least, most));

    private static AskedField Degrees(string label, double least, double most) =>
        new(label, Units.Celsius, new PossibleRange(least, most));
}
