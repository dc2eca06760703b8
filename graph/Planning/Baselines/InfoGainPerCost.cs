namespace DxAssistant.Graph.Planning.Baselines;

/// <summary>The useful check that takes most doubt away, in bits, for its price.</summary>
public sealed class InfoGainPerCost : CheckThenRepair
{
    private protected override double Score(SequencingProblem problem, Position position, int check)
    {
        double[] now = [.. position.WeightSpan];
        Weights.Normalise(now);
        double[] after = new double[now.Length];
        double gain = Entropy(now);
        for (int outcome = 0; outcome < problem.CheckTable.Outcomes(check); outcome++)
            if (problem.CheckTable.Update(check, outcome, now, after) is > 0 and double probability)
                gain -= probability * Entropy(after);
        return gain / problem.CheckTable.Price(position.State, check);
    }

    private static double Entropy(double[] shares)
    {
        double entropy = 0;
        foreach (double share in shares) entropy += Logarithm.Entropy(share);
        return entropy;
    }
}
