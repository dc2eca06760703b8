namespace DxAssistant.Knowledge.Judging;

/// <summary>Three points at given distances: three voltages between three points, three resistances between three
/// terminals.</summary>
/// <remarks>
/// Three voltages between three points are the sides of a phasor triangle, three resistances between three terminals
/// are distances: |a - b| ≤ c ≤ a + b. Sources: Kirchhoff's voltage law; Klein and Randić, Resistance distance,
/// J. Math. Chem. 12 (1993) 81 (from memory).
/// </remarks>
/// <param name="Apex">
/// Of the point opposite the base; the base lies on the axis from 0 to <paramref name="Base"/>.
/// </param>
internal sealed record Triangle(double Base, (double X, double Y) Apex)
{
    // Three standard uncertainties, and what moves between one reading and the next (common practice, no source).
    private const double Coverage = 3;
    private const double Drift = 0.03;

    /// <summary>Finds it; null when no triangle has such sides.</summary>
    /// <param name="ab">The base.</param>
    /// <param name="bc">From the right end of the base to the apex.</param>
    /// <param name="ca">From the apex to the left end of the base.</param>
    public static Triangle? Of(double ab, double bc, double ca)
    {
        double longest = Math.Max(ab, Math.Max(bc, ca));
        if (ab <= 0.02 * longest || longest <= 0 || Excess(longest, ab + bc + ca) > Drift * longest) return null;
        double x = (ab * ab + ca * ca - bc * bc) / (2 * ab);
        return new Triangle(ab, (x, Math.Sqrt(Math.Max(0, ca * ca - x * x))));
    }

    /// <summary>True when no reading is larger than the other two together, as far as the meter can tell.</summary>
    public static bool Closes(Facts facts)
    {
        var largest = facts.Indices.Max(index => facts[index]);
        var sum = facts.Indices.Sum(index => facts[index]);
        var uncertainty = Math.Sqrt(facts.Indices.Sum(index => facts.OfMeter(index) * facts.OfMeter(index)));
        return Excess(largest, sum) <= Coverage * uncertainty + Drift * largest;
    }

    /// <summary>By how much one side is longer than the two others together.</summary>
    private static double Excess(double longest, double sum) => 2 * longest - sum;
}
