namespace DxAssistant.Graph.Model;

/// <summary>
/// Names one access state: how the unit must stand for a check or repair. Ordered by its letters' codes (ordinal),
/// never by a language's alphabet.
/// </summary>
public readonly record struct AccessId(string Value) : IComparable<AccessId>
{
    public int CompareTo(AccessId other) => string.CompareOrdinal(Value, other.Value);
    public override string ToString() => Value;
}
