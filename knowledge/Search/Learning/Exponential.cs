using System.Numerics;
using System.Runtime.CompilerServices;

namespace DxAssistant.Knowledge.Search.Learning;

/// <summary>
/// e to a power by additions and multiplications alone, so that every system learns the same weights to the last bit.
/// </summary>
internal static class Exponential
{
    private const float Least = -80;
    private const int Halvings = 8;

    /// <param name="power">0 or less each; under −80 the answer is 0.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector<float> Of(Vector<float> power)
    {
        // Taylor's row near 0, then squared back up.
        var x = power / (1 << Halvings);
        var one = Vector<float>.One;
        var value = one + (x * (one + (x / 2 * (one + (x / 3 * (one + (x / 4)))))));
        for (var i = 0; i < Halvings; i++)
            value *= value;
        return Vector.ConditionalSelect(Vector.LessThan(power, new Vector<float>(Least)), Vector<float>.Zero, value);
    }
}
