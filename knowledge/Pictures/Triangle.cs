namespace DxAssistant.Knowledge.Pictures;

/// <summary>Three points at given distances: the phasors of three voltages between three points.</summary>
/// <param name="Apex">Of the point opposite the base; the base lies on the axis from 0 to <paramref name="Base"/>.</param>
internal sealed record Triangle(double Base, (double X, double Y) Apex)
{
    // A meter may be that far off before three voltages cannot belong to one triangle.
    private const double Slack = 0.03;

    /// <summary>Finds it; null when no triangle has such sides.</summary>
    /// <param name="ab">The base.</param>
    /// <param name="bc">From the right end of the base to the apex.</param>
    /// <param name="ca">From the apex to the left end of the base.</param>
    public static Triangle? Of(double ab, double bc, double ca)
    {
        double longest = Math.Max(ab, Math.Max(bc, ca));
        if (ab <= 0.02 * longest || longest <= 0 || 2 * longest - (ab + bc + ca) > Slack * longest) return null;
        double x = (ab * ab + ca * ca - bc * bc) / (2 * ab);
        return new Triangle(ab, (x, Math.Sqrt(Math.Max(0, ca * ca - x * x))));
    }
}
