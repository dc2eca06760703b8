using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Content;

/// <summary>The calculations that a check may name.</summary>
internal static class Judges
{
    public static ImmutableArray<IJudge> All { get; } = [];

    public static IJudge? Find(string? name) => All.FirstOrDefault(judge => judge.Name == name);
}
