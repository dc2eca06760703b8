using System.Collections.Immutable;

namespace DxAssistant.Graph.Planning.Trees;

/// <summary>What can be reached from one position, by the number of checks that may be written down.</summary>
/// <param name="most">The largest number.</param>
internal sealed class LimitedOutlook(int most)
{
    // A later way replaces an earlier one only when it is better by more than this.
    private const double Tie = SequencingProblem.Same;

    private readonly TreeStep?[] steps = new TreeStep?[most + 1];

    /// <summary>Expected minutes, by number of checks; infinite as long as there is no way.</summary>
    public double[] Minutes { get; } = [.. Enumerable.Repeat(double.PositiveInfinity, most + 1)];

    /// <summary>What to do when so many checks may be written down.</summary>
    public TreeStep Step(int checks) => steps[checks] ?? TreeStep.Of(new PlannedStep.Nothing());

    /// <summary>A step that could be taken.</summary>
    /// <param name="price">Minutes of the step itself.</param>
    /// <param name="branches">What may follow, each with its probability.</param>
    /// <param name="checks">How many checks the step is: 0 or 1.</param>
    public void Offer(PlannedStep step, double price,
        ImmutableArray<(double Probability, LimitedOutlook Next)> branches, int checks)
    {
        (double[] after, int[][] given) = Shared(branches);
        for (int number = checks; number <= most; number++)
        {
            double minutes = price + after[number - checks];
            if (!(minutes < Minutes[number] - Tie)) continue;
            (Minutes[number], steps[number]) = (minutes, new TreeStep(step, Split(given, number - checks)));
        }
    }

    // Minutes after the step by number of checks, the number shared among the branches as well as can be.
    private (double[] After, int[][] Given) Shared(ImmutableArray<(double Probability, LimitedOutlook Next)> branches)
    {
        double[] sum = new double[most + 1];
        int[][] given = new int[branches.Length][];
        for (int branch = 0; branch < branches.Length; branch++)
        {
            (double probability, LimitedOutlook next) = branches[branch];
            double[] with = [.. Enumerable.Repeat(double.PositiveInfinity, most + 1)];
            given[branch] = new int[most + 1];
            for (int number = 0; number <= most; number++)
                for (int part = 0; part <= number; part++)
                {
                    double minutes = sum[number - part] + probability * next.Minutes[part];
                    if (minutes < with[number] - Tie) (with[number], given[branch][number]) = (minutes, part);
                }

            sum = with;
        }

        return (sum, given);
    }

    private static ImmutableArray<int> Split(int[][] given, int number)
    {
        int[] parts = new int[given.Length];
        for (int branch = given.Length - 1; branch >= 0; branch--)
        {
            parts[branch] = given[branch][number];
            number -= parts[branch];
        }

        return [.. parts];
    }
}
