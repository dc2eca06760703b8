namespace DxAssistant.Knowledge.Quantities;

/// <summary>A number with its unit.</summary>
/// <param name="Value">In <paramref name="Unit"/>, as written.</param>
public sealed record Quantity(double Value, Unit Unit)
{
    public QuantityKind Kind => Unit.Kind;

    /// <summary>The value in the SI base of the kind.</summary>
    public double Si => Unit.ToSi(Value);

    /// <summary>The same quantity in another unit of its kind.</summary>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is of another kind.</exception>
    public Quantity In(Unit unit) => unit.Kind == Kind
        ? new Quantity(unit.FromSi(Si), unit)
        : throw new ArgumentException($"{unit.Symbol} measures {unit.Kind}, not {Kind}", nameof(unit));

    public override string ToString() => $"{NumberText.Of(Value)} {Unit.Symbol}".TrimEnd();
}
