using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>What the page holds that an input links to.</summary>
internal sealed record Linked(SensorCurve? Curve = null, MeterClass? Meter = null)
{
    public static Linked Nothing { get; } = new();

    /// <summary>What a page holds; nothing when it is no page of numbers or cannot be read.</summary>
    public static Linked Of(Page? page) => page?.Kind switch
    {
        PageKind.Curve => new Linked(Curve: CurveReader.CurveOf(page)),
        PageKind.Meter => new Linked(Meter: MeterReader.MeterOf(page)),
        _ => Nothing,
    };
}
