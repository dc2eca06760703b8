namespace DxAssistant.Graph.Planning.Search;

/// <summary>
/// Minutes that finding the fault costs at the least: the doubt there is, against what it costs to take doubt away.
/// </summary>
/// <remarks>
/// <para>
/// Put a price λ on a bit. Until the first repair a plan takes away H − H′ bits. Under a fault with weight p a check
/// that costs c takes away at most D bits, the divergence of its row from what it shows on average, so that it is worth
/// at most λD − c to the plan, or nothing; over all checks done in vain of the way to them, worth less the longest
/// detour among them. What is left of λH is paid in minutes, except for λH′, the doubt at the first repair. Of that, a
/// repair that fails with probability 1 − x and then has cost C pays for (1 − x)C. The price that asks for most minutes
/// is taken.
/// </para>
/// <para>
/// Without the failed repairs: Massey's and Huffman's bounds as used by Pattipati and Alexandridis, IEEE Trans. SMC
/// 20(4), 1990, 872-887; the gain of checks that overlap is no more than the sum of their gains: Cover and Thomas,
/// Elements of Information Theory, chapter 2 (both from memory). Only additions, multiplications and divisions: the
/// same bits everywhere.
/// </para>
/// </remarks>
internal sealed class InformationBound(SequencingProblem problem)
{
    // Golden section: each step keeps 0.618 of the range, so that the price is found to a millionth of it.
    private const int Steps = 30;
    private const double Golden = 0.618;

    // What rounding may take from a bound that is met exactly.
    private const double Rounding = 1e-12;

    private readonly CheckWorth worth = new(problem);
    private readonly FirstRepair firstRepair = new(problem);

    /// <summary>Never more than what any plan takes beyond knowing the fault from the start.</summary>
    /// <param name="weights">Sum to 1.</param>
    /// <param name="useful">The checks that may still be done.</param>
    public double From(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful, int state)
    {
        worth.Prepare(weights, useful, state);
        firstRepair.Prepare(weights);
        double most = 0, low = 0, high = worth.DearestBit;
        double left = high - Golden * (high - low), right = low + Golden * (high - low);
        double atLeft = Minutes(left, weights), atRight = Minutes(right, weights);
        for (int step = 0; step < Steps; step++)
        {
            most = Math.Max(most, Math.Max(atLeft, atRight));
            if (atLeft >= atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - Golden * (high - low);
                atLeft = Minutes(left, weights);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + Golden * (high - low);
                atRight = Minutes(right, weights);
            }
        }

        return most * (1 - Rounding);
    }

    // True for every price: only how much it says depends on it.
    private double Minutes(double price, ReadOnlySpan<double> weights) =>
        price > 0 && firstRepair.Bits(price) is { } bits
            ? price * bits - worth.Minutes(price, weights)
            : double.NegativeInfinity;
}
