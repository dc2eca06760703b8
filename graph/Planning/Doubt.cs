namespace DxAssistant.Graph.Planning;

/// <summary>How much is not known, and how much of it a check takes away.</summary>
internal static class Doubt
{
    /// <summary>Bits of doubt that a check is expected to take away at a position.</summary>
    public static double Gain(SequencingProblem problem, Position position, int check)
    {
        double[] now = [.. position.WeightSpan];
        Weights.Normalise(now);
        double[] after = new double[now.Length];
        double gain = Entropy(now);
        for (int outcome = 0; outcome < problem.CheckTable.Outcomes(check); outcome++)
            if (problem.CheckTable.Update(check, outcome, now, after) is > 0 and double probability)
                gain -= probability * Entropy(after);
        return gain;
    }

    private static double Entropy(double[] shares)
    {
        double entropy = 0;
        foreach (double share in shares) entropy += Logarithm.Entropy(share);
        return entropy;
    }
}
