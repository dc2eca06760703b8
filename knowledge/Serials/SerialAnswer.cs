namespace DxAssistant.Knowledge.Serials;

/// <summary>What a typed serial number is. There are exactly four answers.</summary>
public abstract record SerialAnswer
{
    private SerialAnswer() { }

    /// <summary>It fits.</summary>
    /// <param name="Serial">As it is written on the plate.</param>
    public sealed record Fits(string Serial) : SerialAnswer;

    /// <summary>It is a number of another series.</summary>
    public sealed record OfAnother(string Serial, string Series) : SerialAnswer;

    /// <summary>It fits no series.</summary>
    /// <param name="Example">A number of the series that fits.</param>
    /// <param name="Meant">What was likely meant; null when that cannot be told.</param>
    public sealed record Wrong(string Example, string? Meant) : SerialAnswer;

    /// <summary>The series has no pattern, or none is known: nothing can be said.</summary>
    public sealed record Unknown : SerialAnswer;
}
