namespace DxAssistant.Graph.Model;

/// <summary>Names one repair. Ordered by its letters' codes (ordinal), never by a language's alphabet.</summary>
public readonly record struct RepairId(string Value) : IComparable<RepairId>
{
    /// <summary>Not a repair of the content: leaving the case to somebody who can do more.</summary>
    public static RepairId HandOver { get; } = new("hand-over");

    public int CompareTo(RepairId other) => string.CompareOrdinal(Value, other.Value);
    public override string ToString() => Value;
}
