namespace DxAssistant.Graph.Model;

/// <summary>Names one check. Ordered by its letters' codes (ordinal), never by a language's alphabet.</summary>
public readonly record struct CheckId(string Value) : IComparable<CheckId>
{
    public int CompareTo(CheckId other) => string.CompareOrdinal(Value, other.Value);
    public override string ToString() => Value;
}
