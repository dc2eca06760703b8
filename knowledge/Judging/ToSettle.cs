using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Keys of what would settle a verdict; the phrase file has a sentence for each.</summary>
public static class ToSettle
{
    /// <summary>Measure on a range with finer steps, or with a better meter.</summary>
    public const string BetterRange = "better-range";

    /// <summary>Measure with four wires: the leads' own resistance decides.</summary>
    public const string FourWire = "four-wire";

    /// <summary>Wait until the temperature has settled, then read both again.</summary>
    public const string WaitTemperatureSettle = "wait-temperature-settle";

    /// <summary>Measure again.</summary>
    public const string Repeat = "repeat";

    /// <summary>The reading is of the wrong quantity or unit.</summary>
    public const string CheckUnit = "check-unit";

    /// <summary>No such value can be; check leads, range and unit.</summary>
    public const string CheckReading = "check-reading";

    /// <summary>The pressure lies outside of the refrigerant's table; no table, no verdict.</summary>
    public const string OutsideTable = "outside-table";

    public static ImmutableArray<string> All { get; } =
        [BetterRange, CheckReading, CheckUnit, FourWire, OutsideTable, Repeat, WaitTemperatureSettle];
}
