using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>An input of a judge, as a page or a series gives it.</summary>
public abstract record JudgeInput
{
    private JudgeInput() { }

    /// <summary>A limit, a nominal value, a tolerance.</summary>
    public sealed record Number(Quantity Value) : JudgeInput;

    /// <summary>The curve of a sensor.</summary>
    public sealed record Curve(SensorCurve Value) : JudgeInput;

    /// <summary>What the meter's maker promises.</summary>
    public sealed record Meter(MeterClass Value) : JudgeInput;

    /// <summary>A name, such as a refrigerant.</summary>
    public sealed record Word(string Value) : JudgeInput;
}
