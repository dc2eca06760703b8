using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Content;

/// <summary>The calculations that a check may name.</summary>
internal static class Judges
{
    /// <summary>In the order of their names.</summary>
    public static ImmutableArray<IJudge> All { get; } = [.. JudgeCatalogue.All.Values];

    public static IJudge? Find(string? name) => name is null ? null : JudgeCatalogue.All.GetValueOrDefault(name);
}
