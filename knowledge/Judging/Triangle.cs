namespace DxAssistant.Knowledge.Judging;

/// <summary>Whether three readings between three points can all be true at once.</summary>
/// <remarks>
/// Three voltages between three points are the sides of a phasor triangle, three resistances between three terminals
/// are distances: |a - b| ≤ c ≤ a + b. Sources: Kirchhoff's voltage law; Klein and Randić, Resistance distance,
/// J. Math. Chem. 12 (1993) 81 (from memory).
/// </remarks>
internal static class Triangle
{
    // Three standard uncertainties, and what moves between one reading and the next (common practice, no source).
    private const double Coverage = 3;
    private const double Drift = 0.03;

    /// <summary>True when no reading is larger than the other two together.</summary>
    public static bool Closes(Facts facts)
    {
        var largest = facts.Indices.Max(index => facts[index]);
        var sum = facts.Indices.Sum(index => facts[index]);
        var uncertainty = Math.Sqrt(facts.Indices.Sum(index => facts.OfMeter(index) * facts.OfMeter(index)));
        return 2 * largest - sum <= Coverage * uncertainty + Drift * largest;
    }
}
