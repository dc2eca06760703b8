using System.Collections.Immutable;

namespace DxAssistant.Graph;

/// <summary>How often a fault itself shows outcomes that fit it as badly.</summary>
/// <remarks>
/// The fit is a product over independent checks, so that P(fit ≤ f) ≤ fˢ ∏ Σ p¹⁻ˢ mˢ for any s from 0 to 1, with p the
/// likelihoods of a check's outcomes and m the largest of them. Source: Chernoff, A Measure of Asymptotic Efficiency
/// for Tests of a Hypothesis Based on the Sum of Observations, 1952. The least of four is taken, and all four are made
/// of square roots: these are the same to the last bit on every system, as powers are not.
/// </remarks>
internal static class ChanceOfFit
{
    /// <param name="fit">P(seen | fault) / P(most likely outcomes | fault), 0 to 1.</param>
    /// <param name="rows">The likelihoods of each check's outcomes under the fault.</param>
    /// <returns>At most 1; the chance itself is no larger.</returns>
    public static double AtMost(double fit, IEnumerable<ImmutableArray<double>> rows)
    {
        double quarter = Fourth(fit), half = Math.Sqrt(fit), threeQuarters = half * quarter, whole = fit;
        foreach (ImmutableArray<double> row in rows)
        {
            double most = row.Max();
            quarter *= Sum(row, most, static (p, m) => Math.Sqrt(p) * Fourth(p) * Fourth(m));
            half *= Sum(row, most, static (p, m) => Math.Sqrt(p * m));
            threeQuarters *= Sum(row, most, static (p, m) => Fourth(p) * Math.Sqrt(m) * Fourth(m));
            whole *= Sum(row, most, static (p, m) => p > 0 ? m : 0);
        }

        return Math.Min(1, Math.Min(Math.Min(quarter, half), Math.Min(threeQuarters, whole)));
    }

    private static double Sum(ImmutableArray<double> row, double most, Func<double, double, double> term)
    {
        double sum = 0;
        foreach (double likelihood in row) sum += term(likelihood, most);
        return sum;
    }

    private static double Fourth(double value) => Math.Sqrt(Math.Sqrt(value));
}
