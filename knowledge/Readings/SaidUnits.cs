using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Units;

namespace DxAssistant.Knowledge.Readings;

/// <summary>What a unit says of what was measured, in the spelling that people type.</summary>
public static class SaidUnits
{
    /// <summary>Whether a word, in lower case, is a unit of pressure before anything else.</summary>
    public static bool IsOfPressure(string word) => UnitLexicon.Find(word)?.Meanings[0].Kind
        is QuantityKind.Pressure or QuantityKind.GaugePressure or QuantityKind.AbsolutePressure;
}
