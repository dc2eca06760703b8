using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Readings;

/// <summary>What the technician gave for one measurement.</summary>
/// <param name="Label">Which of several it is (<c>U–V</c>), when said.</param>
/// <param name="Value">In the SI base of the unit's kind; 0 when <paramref name="State"/> is not a number.</param>
/// <param name="Unit">As typed.</param>
/// <param name="Said">The words it came in.</param>
public sealed record Reading(string? Label, ReadingState State, double Value, Unit Unit, string Said)
{
    /// <summary>Makes a reading from a number in a unit.</summary>
    /// <param name="value">In <paramref name="unit"/>.</param>
    public static Reading Of(double value, Unit unit, string? label = null) =>
        new(label, ReadingState.Number, unit.ToSi(value), unit, new Quantity(value, unit).ToString());
}
