using System.Collections.Immutable;
using System.Runtime.InteropServices;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Testability;

/// <summary>How often the best decision between two faults errs when all checks were done.</summary>
/// <remarks>
/// The best decision takes the likelier fault, so of two that are equally likely it errs in half of what the smaller of
/// both probabilities of all that can be seen sums to (Bayes; Duda, Hart and Stork, Pattern Classification, 2nd ed.,
/// 2.3, from memory). Of all that can be seen only the logarithm of the quotient of both probabilities matters, and it
/// adds up over the checks.
/// </remarks>
internal static class LeastError
{
    // Quotients that are alike to a thousandth are one; over fifty checks that moves an error of 10 % to 10.3 % at
    // most.
    private const double Step = 1e-3;

    // What is seen less often than this is left out, and the error is too small by less than all of it.
    private const double Seldom = 1e-10;

    /// <returns>0 to 0.5.</returns>
    public static double Between(FaultId left, FaultId right, IEnumerable<Check> checks)
    {
        Dictionary<int, double> seen = new() { [0] = 1 };
        foreach (Check check in checks)
            if (Check.RowsDiffer(check.Row(left), check.Row(right)))
                seen = After(seen, check.Row(left), check.Row(right));
        return seen.Sum(each => each.Value * Math.Min(1, Math.Exp(-each.Key * Step))) / 2;
    }

    // By how much the left fault is likelier, in steps of its logarithm, and how often that is under the left fault.
    private static Dictionary<int, double> After(Dictionary<int, double> seen, ImmutableArray<double> left,
        ImmutableArray<double> right)
    {
        Dictionary<int, double> next = [];
        for (int outcome = 0; outcome < left.Length; outcome++)
        {
            if (left[outcome] <= 0 || right[outcome] <= 0) continue;
            int moves = (int)Math.Round(Math.Log(left[outcome] / right[outcome]) / Step);
            foreach ((int steps, double often) in seen)
                if (often * left[outcome] is var share && share > Seldom)
                    CollectionsMarshal.GetValueRefOrAddDefault(next, steps + moves, out _) += share;
        }

        return next;
    }
}
