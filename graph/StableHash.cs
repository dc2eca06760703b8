namespace DxAssistant.Graph;

/// <summary>A number that only the letters of a text decide, the same on every system.</summary>
/// <remarks>FNV-1a of 64 bits (IETF draft-eastlake-fnv), a step for each UTF-16 unit.</remarks>
public static class StableHash
{
    private const ulong Start = 14_695_981_039_346_656_037;
    private const ulong Prime = 1_099_511_628_211;

    public static ulong Of(IEnumerable<char> letters)
    {
        ulong hash = Start;
        foreach (char letter in letters) hash = (hash ^ letter) * Prime;
        return hash;
    }
}
