namespace DxAssistant.Graph.Planning.Search;

/// <summary>Sets of checks, 64 a word.</summary>
internal static class Bits
{
    public static bool Has(this ReadOnlySpan<ulong> set, int item) => (set[item >> 6] >> (item & 63) & 1) != 0;

    public static void Put(this Span<ulong> set, int item) => set[item >> 6] |= 1UL << (item & 63);
}
