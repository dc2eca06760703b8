namespace DxAssistant.Knowledge.Judging;

/// <summary>What form an input of a judge takes; each is a case of <see cref="JudgeInput"/>.</summary>
public enum InputForm
{
    Number,
    Curve,
    Meter,
    Word,
}
