namespace DxAssistant.Knowledge.Judging;

/// <summary>What form an input of a judge takes; for each there is a case of <see cref="JudgeInput"/>.</summary>
public enum InputForm
{
    Number,
    Curve,
    Meter,

    /// <summary>A word: the name of a refrigerant whose saturation curve is held.</summary>
    Refrigerant,
}
