namespace DxAssistant.Graph.Model;

/// <summary>Names one fault. Ordered by its letters' codes (ordinal), never by a language's alphabet.</summary>
public readonly record struct FaultId(string Value) : IComparable<FaultId>
{
    /// <summary>
    /// The fault that stands for "none of these, or it comes and goes". An ordinary fault in every other way.
    /// </summary>
    public static FaultId NoneOfThese { get; } = new("none-of-these");

    public int CompareTo(FaultId other) => string.CompareOrdinal(Value, other.Value);
    public override string ToString() => Value;
}
