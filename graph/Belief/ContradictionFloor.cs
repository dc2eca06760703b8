namespace DxAssistant.Graph;

/// <summary>When outcomes contradict each other: a fault explains them that is above either figure.</summary>
/// <param name="Fit">
/// P(seen | fault) / P(most likely outcomes | fault), 0 to 1: below it, what was seen is far from what the fault shows.
/// </param>
/// <param name="Chance">
/// How often a unit with the fault shows outcomes as far from its usual ones, 0 to 1: of many checks a few turn out
/// odd.
/// </param>
public readonly record struct ContradictionFloor(double Fit, double Chance)
{
    /// <summary>When nobody says otherwise; common practice, no source.</summary>
    public static ContradictionFloor Usual { get; } = new(0.001, 0.05);
}
