using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>What goes into a calculation or comes out of it.</summary>
public abstract record CalculationValue
{
    private CalculationValue() { }

    /// <summary>A number with its unit.</summary>
    public sealed record Number(Quantity Quantity) : CalculationValue
    {
        public override string ToString() => Quantity.ToString();
    }

    /// <summary>A number, or as many numbers as the value says, whose unit the program does not know; only ever an
    /// input, and refused where a quantity is needed.</summary>
    public sealed record Unknown(double Value, string Unit) : CalculationValue
    {
        public override string ToString() => NumberText.Of(Value) + " " + Unit;
    }

    /// <summary>A word, such as a refrigerant, a side or a verdict.</summary>
    public sealed record Text(string Value) : CalculationValue
    {
        public override string ToString() => Value;
    }

    /// <summary>Yes or no.</summary>
    public sealed record Flag(bool Value) : CalculationValue
    {
        public override string ToString() => Value ? "true" : "false";
    }

    /// <summary>Several numbers of one unit, in order.</summary>
    public sealed record Numbers(ImmutableArray<double> Values, Unit Unit) : CalculationValue
    {
        public override string ToString() =>
            $"{string.Join(", ", Values.Select(value => NumberText.Of(value)))} {Unit.Symbol}".TrimEnd();
    }

    /// <summary>Several words, in order.</summary>
    public sealed record Texts(ImmutableArray<string> Values) : CalculationValue
    {
        public override string ToString() => string.Join(", ", Values);
    }

    /// <summary>A number given in the SI base of a unit's kind, to be shown in that unit.</summary>
    /// <param name="si">In the SI base of the kind of <paramref name="unit"/>.</param>
    public static CalculationValue OfSi(double si, Unit unit) => new Number(new Quantity(unit.FromSi(si), unit));
}
