namespace DxAssistant.Graph.Model;

/// <summary>
/// Names one outcome of a check; unique within the check. Ordered by its letters' codes (ordinal), never by a
/// language's alphabet.
/// </summary>
public readonly record struct OutcomeId(string Value) : IComparable<OutcomeId>
{
    public int CompareTo(OutcomeId other) => string.CompareOrdinal(Value, other.Value);
    public override string ToString() => Value;
}
