using System.Collections.Immutable;

namespace DxAssistant.Benchmarks.Fitting;

/// <summary>Fits a logistic regression with a ridge on all weights but the first, by Newton's method.</summary>
/// <remarks>
/// Source: Hastie, Tibshirani and Friedman, The Elements of Statistical Learning, 2nd edition, section 4.4.1 (the
/// steps).
/// </remarks>
internal static class RidgeFit
{
    private const double Ridge = 0.1;
    private const int MostSteps = 60;
    private const double LeastStep = 1e-6;

    /// <summary>The weights of the signs.</summary>
    public static double[] Of(ImmutableArray<FitLine> lines)
    {
        var weights = new double[lines[0].Signs.Length];
        for (var step = 0; step < MostSteps; step++)
        {
            var move = Solve(Slopes(lines, weights));
            for (var at = 0; at < weights.Length; at++)
                weights[at] -= move[at];
            if (move.Max(Math.Abs) < LeastStep)
                break;
        }
        return weights;
    }

    /// <summary>The probability that a gate with these weights gives a message.</summary>
    public static double Judge(double[] weights, double[] signs) =>
        1 / (1 + Math.Exp(-weights.Zip(signs, (weight, sign) => weight * sign).Sum()));

    /// <summary>The second derivatives of what is to be least, and the first in the last column.</summary>
    private static double[][] Slopes(ImmutableArray<FitLine> lines, double[] weights)
    {
        var slopes = Enumerable.Range(0, weights.Length).Select(row => Start(row, weights)).ToArray();
        foreach (var line in lines)
            Add(slopes, line, Judge(weights, line.Signs));
        return slopes;
    }

    private static double[] Start(int row, double[] weights)
    {
        const double nearlyNone = 1e-9;
        var start = new double[weights.Length + 1];
        start[row] = row == 0 ? nearlyNone : Ridge;
        start[^1] = row == 0 ? 0 : Ridge * weights[row];
        return start;
    }

    private static void Add(double[][] slopes, FitLine line, double judged)
    {
        var curve = judged * (1 - judged) * line.Weight;
        var error = (judged - (line.Holds ? 1 : 0)) * line.Weight;
        for (var row = 0; row < slopes.Length; row++)
        {
            for (var column = 0; column < slopes.Length; column++)
                slopes[row][column] += curve * line.Signs[row] * line.Signs[column];
            slopes[row][^1] += error * line.Signs[row];
        }
    }

    /// <summary>Gauss and Jordan's elimination with partial pivoting.</summary>
    private static double[] Solve(double[][] rows)
    {
        for (var at = 0; at < rows.Length; at++)
        {
            var pivot = Enumerable.Range(at, rows.Length - at).MaxBy(row => Math.Abs(rows[row][at]));
            (rows[at], rows[pivot]) = (rows[pivot], rows[at]);
            foreach (var row in rows.Where(row => row != rows[at] && row[at] != 0))
                Subtract(row, rows[at], row[at] / rows[at][at]);
        }
        return [.. rows.Select((row, at) => row[^1] / row[at])];
    }

    private static void Subtract(double[] from, double[] row, double times)
    {
        for (var column = 0; column < row.Length; column++)
            from[column] -= times * row[column];
    }
}
