using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace DxAssistant.Graph.Planning;

/// <summary>Sums of products, four at a time.</summary>
/// <remarks>
/// Always four lanes, added up in the same order whatever the processor, so that every system gives the same bits.
/// </remarks>
internal static class Lanes
{
    private const int Width = 4;

    /// <summary>The sum of the products, place by place.</summary>
    public static double Dot(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        Vector256<double> sum = default;
        int end = left.Length - left.Length % Width;
        ref double first = ref MemoryMarshal.GetReference(left), second = ref MemoryMarshal.GetReference(right);
        for (nuint place = 0; place < (nuint)end; place += Width)
            sum += Vector256.LoadUnsafe(ref first, place) * Vector256.LoadUnsafe(ref second, place);
        double total = Total(sum);
        for (int place = end; place < left.Length; place++) total += left[place] * right[place];
        return total;
    }

    /// <summary>The sum of the products, place by place, and the sum of their squares.</summary>
    public static (double Sum, double Squares) DotAndSquares(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        Vector256<double> sum = default, squares = default;
        int end = left.Length - left.Length % Width;
        ref double first = ref MemoryMarshal.GetReference(left), second = ref MemoryMarshal.GetReference(right);
        for (nuint place = 0; place < (nuint)end; place += Width)
        {
            Vector256<double> product = Vector256.LoadUnsafe(ref first, place) * Vector256.LoadUnsafe(ref second, place);
            sum += product;
            squares += product * product;
        }

        (double total, double totalSquares) = (Total(sum), Total(squares));
        for (int place = end; place < left.Length; place++)
        {
            double product = left[place] * right[place];
            total += product;
            totalSquares += product * product;
        }

        return (total, totalSquares);
    }

    /// <summary>The products, place by place, and their sum.</summary>
    public static double Multiply(ReadOnlySpan<double> left, ReadOnlySpan<double> right, Span<double> products)
    {
        Vector256<double> sum = default;
        int end = left.Length - left.Length % Width;
        ref double first = ref MemoryMarshal.GetReference(left), second = ref MemoryMarshal.GetReference(right);
        ref double target = ref MemoryMarshal.GetReference(products);
        for (nuint place = 0; place < (nuint)end; place += Width)
        {
            Vector256<double> product = Vector256.LoadUnsafe(ref first, place) * Vector256.LoadUnsafe(ref second, place);
            product.StoreUnsafe(ref target, place);
            sum += product;
        }

        double total = Total(sum);
        for (int place = end; place < left.Length; place++) total += products[place] = left[place] * right[place];
        return total;
    }

    private static double Total(Vector256<double> lanes) =>
        lanes.GetElement(0) + lanes.GetElement(1) + (lanes.GetElement(2) + lanes.GetElement(3));
}
