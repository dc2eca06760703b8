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
        (int whole, Vector256<double> lanes) = (Whole(left, right), default);
        ref double ours = ref MemoryMarshal.GetReference(left), theirs = ref MemoryMarshal.GetReference(right);
        for (int item = 0; item < whole; item += Width) lanes += Four(ref ours, item) * Four(ref theirs, item);
        double sum = Sum(lanes);
        for (int item = whole; item < left.Length; item++) sum += left[item] * right[item];
        return sum;
    }

    /// <summary>Writes the products and returns their sum.</summary>
    public static double Multiply(ReadOnlySpan<double> left, ReadOnlySpan<double> right, Span<double> products)
    {
        (int whole, Vector256<double> lanes) = (Whole(left, right), default);
        ref double ours = ref MemoryMarshal.GetReference(left), theirs = ref MemoryMarshal.GetReference(right);
        ref double into = ref MemoryMarshal.GetReference(products[..left.Length]);
        for (int item = 0; item < whole; item += Width)
        {
            Vector256<double> product = Four(ref ours, item) * Four(ref theirs, item);
            product.StoreUnsafe(ref into, (nuint)item);
            lanes += product;
        }

        double sum = Sum(lanes);
        for (int item = whole; item < left.Length; item++) sum += products[item] = left[item] * right[item];
        return sum;
    }

    /// <summary>The sum of the products, and the sum of their squares.</summary>
    public static (double Sum, double Squares) DotAndSquares(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        (int whole, Vector256<double> lanes, Vector256<double> squareLanes) = (Whole(left, right), default, default);
        ref double ours = ref MemoryMarshal.GetReference(left), theirs = ref MemoryMarshal.GetReference(right);
        for (int item = 0; item < whole; item += Width)
        {
            Vector256<double> product = Four(ref ours, item) * Four(ref theirs, item);
            lanes += product;
            squareLanes += product * product;
        }

        (double sum, double squares) = (Sum(lanes), Sum(squareLanes));
        for (int item = whole; item < left.Length; item++)
        {
            double product = left[item] * right[item];
            (sum, squares) = (sum + product, squares + product * product);
        }

        return (sum, squares);
    }

    /// <summary>
    /// The sum, over all items, of the less of <c>price × weight of the item</c> and <c>weight × price of the item</c>.
    /// </summary>
    public static double LesserCross(double price, double weight, ReadOnlySpan<double> prices,
        ReadOnlySpan<double> weights)
    {
        (int whole, Vector256<double> lanes) = (Whole(prices, weights), default);
        (Vector256<double> priceLanes, Vector256<double> weightLanes) =
            (Vector256.Create(price), Vector256.Create(weight));
        ref double priced = ref MemoryMarshal.GetReference(prices), weighed = ref MemoryMarshal.GetReference(weights);
        // The native minimum differs from the other only for what is no number and for zeros of both signs; neither
        // comes here.
        for (int item = 0; item < whole; item += Width)
            lanes += Vector256.MinNative(priceLanes * Four(ref weighed, item), weightLanes * Four(ref priced, item));
        double sum = Sum(lanes);
        for (int item = whole; item < prices.Length; item++)
        {
            double one = price * weights[item], other = weight * prices[item];
            sum += one < other ? one : other;
        }

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

    private static Vector256<double> Four(ref double first, int item) => Vector256.LoadUnsafe(ref first, (nuint)item);

    // How many items fill whole vectors. Nothing is read past the shorter of the two.
    private static int Whole(ReadOnlySpan<double> items, ReadOnlySpan<double> others) =>
        others.Length >= items.Length
            ? items.Length & ~(Width - 1)
            : throw new ArgumentException("fewer items on one side than on the other");
}
