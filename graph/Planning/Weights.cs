namespace DxAssistant.Graph.Planning;

/// <summary>Sums over the weights of faults.</summary>
internal static class Weights
{
    public static double Mass(this ReadOnlySpan<double> weights)
    {
        double mass = 0;
        foreach (double weight in weights) mass += weight;
        return mass;
    }

    /// <summary>How many faults are still possible.</summary>
    public static int LiveFaults(this ReadOnlySpan<double> weights)
    {
        int live = 0;
        foreach (double weight in weights)
            if (weight > 0) live++;
        return live;
    }

    /// <summary>Divides by the sum.</summary>
    public static void Normalise(this Span<double> weights)
    {
        double mass = Mass(weights);
        for (int fault = 0; fault < weights.Length; fault++) weights[fault] /= mass;
    }
}
