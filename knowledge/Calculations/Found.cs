using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>One value that a calculation found, before it gets its unit.</summary>
internal abstract record Found
{
    private Found() { }

    internal sealed record Number(double Si) : Found;
    internal sealed record Numbers(ImmutableArray<double> Si) : Found;
    internal sealed record Done(CalculationValue Value) : Found;

    public static implicit operator Found(double si) => new Number(si);
    public static implicit operator Found(Resistance value) => new Number(value.Ohms);
    public static implicit operator Found(Temperature value) => new Number(value.Celsius);
    public static implicit operator Found(TemperatureDelta value) => new Number(value.Kelvins);
    public static implicit operator Found(AbsolutePressure value) => new Number(value.Pascals);
    public static implicit operator Found(GaugePressure value) => new Number(value.Pascals);
    public static implicit operator Found(string word) => new Done(new CalculationValue.Text(word));
    public static implicit operator Found(bool flag) => new Done(new CalculationValue.Flag(flag));
    public static implicit operator Found(ImmutableArray<string> words) => new Done(new CalculationValue.Texts(words));
    public static implicit operator Found(ImmutableArray<double> si) => new Numbers(si);

    internal bool IsFinite => this switch
    {
        Number number => double.IsFinite(number.Si),
        Numbers numbers => numbers.Si.All(double.IsFinite),
        _ => true,
    };

    /// <summary>The value in a unit; the unit is not null for numbers.</summary>
    internal CalculationValue In(Unit? unit) => this switch
    {
        Number number => CalculationValue.OfSi(number.Si, unit!),
        Numbers numbers => new CalculationValue.Numbers([.. numbers.Si.Select(unit!.FromSi)], unit!),
        Done done => done.Value,
        _ => throw new InvalidOperationException("no such value"),
    };
}
