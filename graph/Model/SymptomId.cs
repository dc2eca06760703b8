namespace DxAssistant.Graph.Model;

/// <summary>Names one symptom. Ordered by its letters' codes (ordinal), never by a language's alphabet.</summary>
public readonly record struct SymptomId(string Value) : IComparable<SymptomId>
{
    public int CompareTo(SymptomId other) => string.CompareOrdinal(Value, other.Value);
    public override string ToString() => Value;
}
