using System.Collections.Immutable;

namespace DxAssistant.Server.Offline;

/// <summary>What a browser keeps to work without signal.</summary>
/// <param name="Engine">Null when the program was built without it: then there is no work without signal.</param>
/// <param name="Pack">Null where a core without pages answers, as in tests.</param>
internal sealed record OfflineKit(OfflineKit.Part? Engine, OfflineKit.Part? Pack)
{
    /// <param name="Root">The address that the files lie below.</param>
    /// <param name="Bytes">What they take on the way, in bytes.</param>
    public sealed record Part(string Version, string Root, ImmutableArray<string> Files, long Bytes);
}
