namespace DxAssistant.Knowledge.Calculations;

/// <summary>What form an input of a named calculation takes.</summary>
public enum CalculationInputForm
{
    Number,
    Word,
    Numbers,
    Words,
}
