namespace DxAssistant.Knowledge.Walks;

/// <summary>The most expected minutes that a rule may cost each time it puts a step in another's place.</summary>
/// <param name="Minutes">0 or more; infinite where a gate of safety is no matter of minutes.</param>
/// <param name="Share">Of the expected minutes to the end of the walk; 0 or more.</param>
public sealed record RuleLimit(double Minutes, double Share)
{
    /// <summary>No limit.</summary>
    public static RuleLimit Any { get; } = new(double.PositiveInfinity, 0);

    /// <summary>The larger of the two, minutes.</summary>
    /// <param name="expected">Expected minutes to the end of the walk.</param>
    public double Of(double expected) => Math.Max(Minutes, Share * expected);
}
