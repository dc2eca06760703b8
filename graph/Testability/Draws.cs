namespace DxAssistant.Graph.Testability;

/// <summary>Draws from a seed, the same on every system.</summary>
/// <remarks>
/// SplitMix64: Steele, Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA 2014 (from memory).
/// </remarks>
public sealed class Draws(ulong seed)
{
    private ulong state = seed;

    /// <summary>The next number, all 64 bits.</summary>
    public ulong Next()
    {
        ulong mixed = state += 0x9E37_79B9_7F4A_7C15;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58_476D_1CE4_E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D0_49BB_1331_11EB;
        return mixed ^ (mixed >> 31);
    }

    /// <summary>The next number from 0 to 1, 1 excluded.</summary>
    public double NextShare() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A place among the weights, each as likely as its share of their sum.</summary>
    /// <param name="weights">0 or more, at least one above 0.</param>
    public int NextPlace(ReadOnlySpan<double> weights)
    {
        double sum = 0;
        foreach (double weight in weights) sum += weight;
        double left = NextShare() * sum;
        int last = 0;
        for (int place = 0; place < weights.Length; place++)
        {
            if (weights[place] <= 0) continue;
            last = place;
            if ((left -= weights[place]) < 0) return place;
        }

        return last;
    }
}
