using System.Collections.Immutable;
using Kind = DxAssistant.Knowledge.Quantities.QuantityKind;

namespace DxAssistant.Knowledge.Quantities;

/// <summary>The table of units. Where one spelling has several meanings, the first line is its default.</summary>
/// <remarks>
/// Exact by definition: 1 lbf/in² = 6894.757293168 Pa, 1 atm = 101,325 Pa, 1 ft = 0.3048 m, 1 lb = 0.45359237 kg.
/// 1 micron (of mercury) = 101,325/760,000 Pa. 1 Btu (International Table) = 1055.05585262 J. 1 inHg at 0 °C =
/// 3386.389 Pa.
/// </remarks>
public static class Units
{
    private const double Psi = 6894.757293168;
    private const double Micron = 101_325.0 / 760_000;
    private const double Foot = 0.3048;
    private const double CubicFoot = Foot * Foot * Foot;
    private const double Pound = 0.45359237;
    private const double Btu = 1055.05585262;
    private const double Rankine = 5.0 / 9;

    public static Unit Ohm { get; } = Of("Ω", "ohm", Kind.Resistance, 1);
    public static Unit KiloOhm { get; } = Of("kΩ", "kohm", Kind.Resistance, 1e3);
    public static Unit MegaOhm { get; } = Of("MΩ", "Mohm", Kind.Resistance, 1e6);
    public static Unit MilliOhm { get; } = Of("mΩ", "mohm", Kind.Resistance, 1e-3);
    public static Unit GigaOhm { get; } = Of("GΩ", "Gohm", Kind.Resistance, 1e9);
    public static Unit OhmPerMeter { get; } = Of("Ω/m", "ohm/m", Kind.ResistancePerLength, 1);
    public static Unit OhmPerKilometer { get; } = Of("Ω/km", "ohm/km", Kind.ResistancePerLength, 1e-3);
    public static Unit OhmPerKiloFoot { get; } = Of("Ω/kft", "ohm/kft", Kind.ResistancePerLength, 1e-3 / Foot);
    public static Unit Volt { get; } = Of("V", "V", Kind.Voltage, 1, "VAC", "VDC", "Vac", "Vdc");
    public static Unit MilliVolt { get; } = Of("mV", "mV", Kind.Voltage, 1e-3);
    public static Unit KiloVolt { get; } = Of("kV", "kV", Kind.Voltage, 1e3);
    public static Unit Ampere { get; } = Of("A", "A", Kind.Current, 1);
    public static Unit MilliAmpere { get; } = Of("mA", "mA", Kind.Current, 1e-3);
    public static Unit MicroAmpere { get; } = Of("µA", "uA", Kind.Current, 1e-6);
    public static Unit Watt { get; } = Of("W", "W", Kind.Power, 1);
    public static Unit KiloWatt { get; } = Of("kW", "kW", Kind.Power, 1e3);
    public static Unit BtuPerHour { get; } = Of("Btu/h", "Btu/h", Kind.Power, Btu / 3600);
    public static Unit Farad { get; } = Of("F", "F", Kind.Capacitance, 1);
    public static Unit MicroFarad { get; } = Of("µF", "uF", Kind.Capacitance, 1e-6, "MFD", "mfd");
    public static Unit NanoFarad { get; } = Of("nF", "nF", Kind.Capacitance, 1e-9);
    public static Unit MicroFaradVoltPerAmpere { get; } = Of("µF V/A", "uF V/A", Kind.CapacitanceFactor, 1e-6);
    public static Unit Hertz { get; } = Of("Hz", "Hz", Kind.Frequency, 1);
    public static Unit KiloHertz { get; } = Of("kHz", "kHz", Kind.Frequency, 1e3);
    public static Unit RevolutionsPerMinute { get; } = Of("r/min", "rpm", Kind.RotationalSpeed, 1);
    public static Unit Celsius { get; } = Of("°C", "degC", Kind.Temperature, 1);
    public static Unit Fahrenheit { get; } = new("°F", "degF", Kind.Temperature, Rankine, -32);
    public static Unit Kelvin { get; } = Of("K", "K", Kind.TemperatureDifference, 1, "C_diff", "degC_diff", "°C",
        "degC");
    public static Unit FahrenheitDifference { get; } = Of(
        "°F", "F_diff", Kind.TemperatureDifference, Rankine, "degF_diff", "degF");
    public static Unit PerKelvin { get; } = Of("1/K", "1/K", Kind.InverseTemperature, 1);
    public static Unit PercentPerKelvin { get; } = Of("%/K", "%/K", Kind.InverseTemperature, 0.01);
    public static Unit PsiGauge { get; } = Of("psig", "psig", Kind.GaugePressure, Psi);
    public static Unit KiloPascalGauge { get; } = Of("kPa(g)", "kPa_gauge", Kind.GaugePressure, 1e3, "kPag");
    public static Unit BarGauge { get; } = Of("bar(g)", "bar_gauge", Kind.GaugePressure, 1e5, "barg");
    public static Unit PascalGauge { get; } = Of("Pa(g)", "Pa_gauge", Kind.GaugePressure, 1, "Pag");
    /// <summary>Vacuum on a compound gauge: how far below the air, so a larger number is a lower pressure.</summary>
    public static Unit InchOfMercuryVacuum { get; } = Of("inHg vac", "inHg_vac", Kind.GaugePressure, -3386.389);
    public static Unit PsiAbsolute { get; } = Of("psia", "psia", Kind.AbsolutePressure, Psi);
    public static Unit KiloPascalAbsolute { get; } = Of("kPa(a)", "kPa_abs", Kind.AbsolutePressure, 1e3, "kPaa");
    public static Unit BarAbsolute { get; } = Of("bar(a)", "bar_abs", Kind.AbsolutePressure, 1e5, "bara");
    public static Unit PascalAbsolute { get; } = Of("Pa(a)", "Pa_abs", Kind.AbsolutePressure, 1, "Paa");
    public static Unit MicronOfMercury { get; } = Of("micron", "micron", Kind.AbsolutePressure, Micron, "microns",
        "mTorr");
    public static Unit Pascal { get; } = Of("Pa", "Pa", Kind.Pressure, 1);
    public static Unit KiloPascal { get; } = Of("kPa", "kPa", Kind.Pressure, 1e3);
    public static Unit PoundPerSquareInch { get; } = Of("psi", "psi", Kind.Pressure, Psi);
    public static Unit Bar { get; } = Of("bar", "bar", Kind.Pressure, 1e5);
    public static Unit MilliBar { get; } = Of("mbar", "mbar", Kind.Pressure, 100);
    public static Unit MicronPerMinute { get; } = Of("micron/min", "micron/min", Kind.PressureRate, Micron / 60);
    public static Unit PascalPerSecond { get; } = Of("Pa/s", "Pa/s", Kind.PressureRate, 1);
    public static Unit Second { get; } = Of("s", "s", Kind.Time, 1);
    public static Unit Minute { get; } = Of("min", "min", Kind.Time, 60);
    public static Unit Hour { get; } = Of("h", "h", Kind.Time, 3600);
    public static Unit Meter { get; } = Of("m", "m", Kind.Length, 1);
    public static Unit MilliMeter { get; } = Of("mm", "mm", Kind.Length, 1e-3);
    public static Unit FootLength { get; } = Of("ft", "ft", Kind.Length, Foot);
    public static Unit SquareMeter { get; } = Of("m²", "m2", Kind.Area, 1);
    public static Unit SquareMilliMeter { get; } = Of("mm²", "mm2", Kind.Area, 1e-6);
    public static Unit CubicMeter { get; } = Of("m³", "m3", Kind.Volume, 1);
    public static Unit Kilogram { get; } = Of("kg", "kg", Kind.Mass, 1);
    public static Unit KilogramPerMeter { get; } = Of("kg/m", "kg/m", Kind.MassPerLength, 1);
    public static Unit KilogramPerSecond { get; } = Of("kg/s", "kg/s", Kind.MassFlow, 1);
    public static Unit KilogramPerHour { get; } = Of("kg/h", "kg/h", Kind.MassFlow, 1.0 / 3600);
    public static Unit KilogramPerMole { get; } = Of("kg/mol", "kg/mol", Kind.MolarMass, 1);
    public static Unit KilogramPerCubicMeter { get; } = Of("kg/m³", "kg/m3", Kind.Density, 1);
    public static Unit PoundPerCubicFoot { get; } = Of("lb/ft³", "lb/ft3", Kind.Density, Pound / CubicFoot);
    public static Unit PoundPerHourPerCfm { get; } = Of(
        "lb min/(h ft³)", "lb min/(h ft3)", Kind.Density, Pound / CubicFoot / 60);
    public static Unit CubicMeterPerSecond { get; } = Of("m³/s", "m3/s", Kind.AirFlow, 1);
    public static Unit CubicFootPerMinute { get; } = Of("cfm", "cfm", Kind.AirFlow, CubicFoot / 60, "CFM", "ft3/min");
    public static Unit One { get; } = Of("", "", Kind.Ratio, 1, "1");
    public static Unit Percent { get; } = Of("%", "%", Kind.Ratio, 0.01);
    public static Unit GramPerKilogram { get; } = Of("g/kg", "g/kg", Kind.HumidityRatio, 1e-3);
    public static Unit KilogramPerKilogram { get; } = Of("kg/kg", "kg/kg", Kind.HumidityRatio, 1, "lb/lb");
    public static Unit KiloJoulePerKilogram { get; } = Of("kJ/kg", "kJ/kg", Kind.SpecificEnthalpy, 1e3);
    public static Unit BtuPerPound { get; } = Of("Btu/lb", "Btu/lb", Kind.SpecificEnthalpy, Btu / Pound);
    public static Unit CubicMeterPerKilogram { get; } = Of("m³/kg", "m3/kg_da", Kind.SpecificVolume, 1, "m3/kg");
    public static Unit BtuPerPoundFahrenheit { get; } =
        Of("Btu/(lb °F)", "Btu/lbF", Kind.SpecificHeat, Btu / Pound / Rankine);
    public static Unit BtuPerHourCfmFahrenheit { get; } =
        Of("Btu/(h cfm °F)", "Btu/(h cfm F)", Kind.VolumetricHeatCapacity, Btu / 60 / CubicFoot / Rankine);
    public static Unit BtuPerHourCfm { get; } =
        Of("Btu/(h cfm lb/lb)", "Btu/(h cfm lb/lb)", Kind.VolumetricHeat, Btu / 60 / CubicFoot);
    public static Unit BtuPerHourCfmGrain { get; } =
        Of("Btu/(h cfm gr/lb)", "Btu/(h cfm gr/lb)", Kind.VolumetricHeat, Btu / 60 / CubicFoot * 7000);
    public static Unit Each { get; } = Of("", "", Kind.Count, 1, "1");
    public static Unit AmericanWireGauge { get; } = Of("AWG", "AWG", Kind.WireGauge, 1);

    private static readonly ImmutableArray<Unit> Named =
    [
        Ohm, KiloOhm, MegaOhm, MilliOhm, GigaOhm, OhmPerMeter, OhmPerKilometer, OhmPerKiloFoot, Volt, MilliVolt,
        KiloVolt,
        Ampere, MilliAmpere, MicroAmpere, Watt, KiloWatt, BtuPerHour, Farad, MicroFarad, NanoFarad,
        MicroFaradVoltPerAmpere,
        Hertz, KiloHertz, RevolutionsPerMinute, Celsius, Fahrenheit, Kelvin, FahrenheitDifference, PerKelvin,
        PercentPerKelvin,
        PsiGauge, KiloPascalGauge, BarGauge, PascalGauge, InchOfMercuryVacuum, PsiAbsolute, KiloPascalAbsolute,
        BarAbsolute, PascalAbsolute,
        MicronOfMercury, Pascal, KiloPascal, PoundPerSquareInch, Bar, MilliBar, MicronPerMinute, PascalPerSecond,
        Second, Minute, Hour, Meter, MilliMeter, FootLength, SquareMeter, SquareMilliMeter, CubicMeter, Kilogram,
        KilogramPerMeter, KilogramPerSecond, KilogramPerHour, KilogramPerMole, KilogramPerCubicMeter, PoundPerCubicFoot,
        PoundPerHourPerCfm,
        CubicMeterPerSecond, CubicFootPerMinute, One, Percent, GramPerKilogram, KilogramPerKilogram,
        KiloJoulePerKilogram,
        BtuPerPound, CubicMeterPerKilogram, BtuPerPoundFahrenheit, BtuPerHourCfmFahrenheit, BtuPerHourCfm,
        BtuPerHourCfmGrain, Each, AmericanWireGauge,
    ];

    internal static readonly ImmutableArray<Unit> All = [.. Named, .. Seldom(), .. PressuresWithoutZero(),
        .. Kelvins()];

    internal static readonly ImmutableDictionary<string, ImmutableArray<Unit>> BySpelling = All
        .SelectMany(unit => unit.Spellings.Select(spelling => (spelling, unit)))
        .GroupBy(pair => pair.spelling, pair => pair.unit, StringComparer.Ordinal)
        .ToImmutableDictionary(group => group.Key, group => group.ToImmutableArray(), StringComparer.Ordinal);

    private static Unit Of(string symbol, string code, QuantityKind kind, double factor, params string[] spellings) =>
        new(symbol, code, kind, factor, 0, spellings);

    private static ImmutableArray<Unit> Seldom() =>
    [
        Of("MPa", "MPa", Kind.Pressure, 1e6), Of("hPa", "hPa", Kind.Pressure, 100),
        Of("atm", "atm", Kind.Pressure, 101_325),
        Of("inHg", "inHg", Kind.Pressure, 3386.389), Of("inH₂O", "inH2O", Kind.Pressure, 249.08891, "inwc", "inWC"),
        Of("Torr", "Torr", Kind.Pressure, 1000 * Micron, "mmHg"), Of("kgf/cm²", "kgf/cm2", Kind.Pressure, 98_066.5),
        Of("ms", "ms", Kind.Time, 1e-3), Of("kPa/min", "kPa/min", Kind.PressureRate, 1000.0 / 60),
        Of("Pa/min", "Pa/min", Kind.PressureRate, 1.0 / 60),
        Of("km", "km", Kind.Length, 1e3), Of("cm", "cm", Kind.Length, 0.01), Of("in", "in", Kind.Length, Foot / 12),
        Of("ft²", "ft2", Kind.Area, Foot * Foot), Of("cm²", "cm2", Kind.Area, 1e-4),
        Of("L", "L", Kind.Volume, 1e-3, "l"), Of("ft³", "ft3", Kind.Volume, CubicFoot),
        Of("g", "g", Kind.Mass, 1e-3), Of("lb", "lb", Kind.Mass, Pound), Of("oz", "oz", Kind.Mass, Pound / 16),
        Of("g/m", "g/m", Kind.MassPerLength, 1e-3), Of("oz/ft", "oz/ft", Kind.MassPerLength, Pound / 16 / Foot),
        Of("L/min", "L/min", Kind.AirFlow, 1e-3 / 60, "l/min"), Of("L/h", "L/h", Kind.AirFlow, 1e-3 / 3600, "l/h"),
        Of("g/s", "g/s", Kind.MassFlow, 1e-3), Of("lb/h", "lb/h", Kind.MassFlow, Pound / 3600),
        Of("lb/min", "lb/min", Kind.MassFlow, Pound / 60),
        Of("g/mol", "g/mol", Kind.MolarMass, 1e-3, "kg/kmol"), Of("g/m³", "g/m3", Kind.Density, 1e-3),
        Of("g/L", "g/L", Kind.Density, 1),
        Of("m³/h", "m3/h", Kind.AirFlow, 1.0 / 3600), Of("m³/min", "m3/min", Kind.AirFlow, 1.0 / 60),
        Of("L/s", "L/s", Kind.AirFlow, 1e-3, "l/s"),
        Of("% vol", "% vol", Kind.Ratio, 0.01, "%vol", "vol %", "vol%"), Of("ppm", "ppm", Kind.Ratio, 1e-6),
        Of("gr/lb", "gr/lb", Kind.HumidityRatio, 1.0 / 7000), Of("J/kg", "J/kg", Kind.SpecificEnthalpy, 1),
        Of("ft³/lb", "ft3/lb", Kind.SpecificVolume, CubicFoot / Pound),
        Of("J/(kg K)", "J/(kg K)", Kind.SpecificHeat, 1),
        Of("kJ/(kg K)", "kJ/(kg K)", Kind.SpecificHeat, 1e3, "kJ/kgK"), Of("pF", "pF", Kind.Capacitance, 1e-12),
        Of("mF", "mF", Kind.Capacitance, 1e-3), Of("MW", "MW", Kind.Power, 1e6), Of("mW", "mW", Kind.Power, 1e-3),
        Of("F V/A", "F V/A", Kind.CapacitanceFactor, 1), Of("ohm/ft", "ohm/ft", Kind.ResistancePerLength, 1 / Foot),
        Of("µV", "uV", Kind.Voltage, 1e-6), Of("kA", "kA", Kind.Current, 1e3), Of("MHz", "MHz", Kind.Frequency, 1e6),
        Of("1/s", "1/s", Kind.Frequency, 1),
    ];

    // "kPa" alone does not say its zero: asked for as gauge or absolute, it is that.
    private static IEnumerable<Unit> PressuresWithoutZero() =>
        Named.Concat(Seldom()).Where(unit => unit.Kind == Kind.Pressure).SelectMany(unit => new[]
        {
            Of(unit.Symbol, unit.Code, Kind.GaugePressure, unit.ToSi(1), [.. unit.Spellings]),
            Of(unit.Symbol, unit.Code, Kind.AbsolutePressure, unit.ToSi(1), [.. unit.Spellings]),
        }).Append(Of("micron", "micron", Kind.Pressure, Micron, "microns", "mTorr"));

    private static ImmutableArray<Unit> Kelvins() =>
        [new("K", "K", Kind.Temperature, 1, -273.15), new("°R", "degR", Kind.Temperature, Rankine, -491.67)];
}
