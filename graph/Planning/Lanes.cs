using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace DxAssistant.Graph.Planning;

/// <summary>Sums over faults, four at a time.</summary>
/// <remarks>
/// Always four lanes, added up in the same order, and no fused operation: every system gives the same bits, with or
/// without the instructions for it.
/// </remarks>
internal static class Lanes
{
    private const int Width = 4;

    /// <summary>The sum of the products.</summary>
    public static double Dot(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        ReadOnlySpan<Vector256<double>> ours = Whole(left), theirs = Whole(right);
        Vector256<double> lanes = default;
        for (int place = 0; place < ours.Length; place++) lanes += ours[place] * theirs[place];
        double sum = Sum(lanes);
        for (int item = ours.Length * Width; item < left.Length; item++) sum += left[item] * right[item];
        return sum;
    }

    /// <summary>Writes the products and returns their sum.</summary>
    public static double Multiply(ReadOnlySpan<double> left, ReadOnlySpan<double> right, Span<double> products)
    {
        ReadOnlySpan<Vector256<double>> ours = Whole(left), theirs = Whole(right);
        Span<Vector256<double>> into = MemoryMarshal.Cast<double, Vector256<double>>(products);
        Vector256<double> lanes = default;
        for (int place = 0; place < ours.Length; place++) lanes += into[place] = ours[place] * theirs[place];
        double sum = Sum(lanes);
        for (int item = ours.Length * Width; item < left.Length; item++) sum += products[item] = left[item] * right[item];
        return sum;
    }

    /// <summary>The sum of the products, and the sum of their squares.</summary>
    public static (double Sum, double Squares) DotAndSquares(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        ReadOnlySpan<Vector256<double>> ours = Whole(left), theirs = Whole(right);
        Vector256<double> lanes = default, squareLanes = default;
        for (int place = 0; place < ours.Length; place++)
        {
            Vector256<double> product = ours[place] * theirs[place];
            lanes += product;
            squareLanes += product * product;
        }

        (double sum, double squares) = (Sum(lanes), Sum(squareLanes));
        for (int item = ours.Length * Width; item < left.Length; item++)
        {
            double product = left[item] * right[item];
            (sum, squares) = (sum + product, squares + product * product);
        }

        return (sum, squares);
    }

    /// <summary>The sum, over all items, of the less of <c>price × weight of the item</c> and <c>weight × price of the item</c>.</summary>
    public static double LesserCross(double price, double weight, ReadOnlySpan<double> prices, ReadOnlySpan<double> weights)
    {
        ReadOnlySpan<Vector256<double>> priced = Whole(prices), weighed = Whole(weights);
        Vector256<double> lanes = default, priceLanes = Vector256.Create(price), weightLanes = Vector256.Create(weight);
        for (int place = 0; place < priced.Length; place++)
            lanes += Vector256.Min(priceLanes * weighed[place], weightLanes * priced[place]);
        double sum = Sum(lanes);
        for (int item = priced.Length * Width; item < prices.Length; item++)
            sum += Math.Min(price * weights[item], weight * prices[item]);
        return sum;
    }

    /// <summary>Divides each item.</summary>
    public static void Divide(Span<double> items, double divisor)
    {
        Span<Vector256<double>> whole = MemoryMarshal.Cast<double, Vector256<double>>(items);
        Vector256<double> lanes = Vector256.Create(divisor);
        for (int place = 0; place < whole.Length; place++) whole[place] /= lanes;
        for (int item = whole.Length * Width; item < items.Length; item++) items[item] /= divisor;
    }

    private static double Sum(Vector256<double> lanes) => lanes[0] + lanes[1] + (lanes[2] + lanes[3]);

    private static ReadOnlySpan<Vector256<double>> Whole(ReadOnlySpan<double> items) =>
        MemoryMarshal.Cast<double, Vector256<double>>(items);
}
