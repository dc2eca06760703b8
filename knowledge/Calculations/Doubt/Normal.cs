namespace DxAssistant.Knowledge.Calculations.Doubt;

/// <summary>The normal distribution.</summary>
/// <remarks>
/// Source: Abramowitz &amp; Stegun, Handbook of Mathematical Functions, 26.2.11 (series) and 26.2.14 (continued
/// fraction); numbers from memory.
/// </remarks>
public static class Normal
{
    /// <summary>Probability that a standard normal variable is at most z; exact to about 1e-14.</summary>
    /// <param name="z">Any number, infinities included.</param>
    public static double Probability(double z)
    {
        if (double.IsNaN(z))
            throw new ArgumentOutOfRangeException(nameof(z), z, "z is not a number");
        var size = Math.Abs(z);
        var tail = size > 38 ? 0 : size < 3 ? 0.5 - Density(size) * Series(size) : Density(size) * Tail(size);
        return z > 0 ? 1 - tail : tail;
    }

    /// <summary>Probability between two values of a standard normal variable, without losing a small tail.</summary>
    public static double Between(double low, double high) =>
        low > 0 ? Probability(-low) - Probability(-high) : Probability(high) - Probability(low);

    /// <summary>The z below which a standard normal variable lies with a probability.</summary>
    /// <param name="probability">Above 0, below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static double Quantile(double probability)
    {
        if (!(probability > 0 && probability < 1))
            throw new ArgumentOutOfRangeException(nameof(probability), probability,
                "a probability above 0 and below 1 is needed");
        var (low, high) = (-39.0, 39.0);
        for (var i = 0; i < 70; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Probability(middle) < probability ? (middle, high) : (low, middle);
        }
        return (low + high) / 2;
    }

    private static double Density(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);

    private static double Series(double z)
    {
        var (term, sum) = (z, z);
        for (var n = 3; Math.Abs(term) > 1e-17 * sum; n += 2)
        {
            term *= z * z / n;
            sum += term;
        }
        return sum;
    }

    private static double Tail(double z)
    {
        var fraction = 0.0;
        for (var n = 120; n > 0; n--)
            fraction = n / (z + fraction);
        return 1 / (z + fraction);
    }
}
