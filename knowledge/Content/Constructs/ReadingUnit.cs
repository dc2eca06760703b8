using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Reads the unit that a bare number of a reading is taken in.</summary>
internal static class ReadingUnit
{
    /// <summary>The unit of the wanted kind; of any kind when none is wanted; null when there is none so
    /// written.</summary>
    public static Unit? Read(string text, QuantityKind? kind)
    {
        bool known = kind is { } wanted ? Unit.TryParse(text, wanted, out Unit? unit) : Unit.TryParse(text, out unit);
        return known ? unit : null;
    }
}
