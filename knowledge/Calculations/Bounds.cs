using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>Ends of a range, in the unit of the input they belong to.</summary>
/// <param name="LeastIncluded">False when the lower end itself is outside.</param>
public sealed record Bounds(double Least, double Most, bool LeastIncluded = true)
{
    public static Bounds None { get; } = new(double.NegativeInfinity, double.PositiveInfinity);
    public static Bounds Positive { get; } = new(0, double.PositiveInfinity, LeastIncluded: false);
    public static Bounds NotNegative { get; } = new(0, double.PositiveInfinity);

    public bool Holds(double value) => (LeastIncluded ? value >= Least : value > Least) && value <= Most;

    /// <summary>The range in words: <c>above 0</c>, <c>-40 to 125</c>.</summary>
    public override string ToString() => (double.IsInfinity(Least), double.IsInfinity(Most)) switch
    {
        (true, true) => "any number",
        (true, false) => $"at most {NumberText.Of(Most)}",
        (false, true) => (LeastIncluded ? "at least " : "above ") + NumberText.Of(Least),
        _ => (LeastIncluded ? "" : "above ") + $"{NumberText.Of(Least)} to {NumberText.Of(Most)}",
    };
}
