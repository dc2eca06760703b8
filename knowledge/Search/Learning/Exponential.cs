using System.Runtime.CompilerServices;

namespace DxAssistant.Knowledge.Search.Learning;

/// <summary>e to a power by additions and multiplications alone, so that every system learns the same weights to the last bit.</summary>
internal static class Exponential
{
    private const float Least = -80;
    private const int Halvings = 8;

    /// <param name="power">0 or less; under −80 the answer is 0.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static float Of(float power)
    {
        if (power < Least)
            return 0;
        // Taylor's row near 0, then squared back up.
        var x = power / (1 << Halvings);
        var value = 1 + (x * (1 + (x / 2 * (1 + (x / 3 * (1 + (x / 4)))))));
        for (var i = 0; i < Halvings; i++)
            value *= value;
        return value;
    }
}
