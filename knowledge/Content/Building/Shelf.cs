using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>What other pages refer to, built first.</summary>
internal sealed record Shelf(
    ImmutableSortedDictionary<string, Source> Sources,
    ImmutableSortedDictionary<string, CautionPage> Cautions,
    ImmutableSortedDictionary<string, Role> Roles)
{
    public static Shelf Empty { get; } = new(
        ImmutableSortedDictionary.Create<string, Source>(StringComparer.Ordinal),
        ImmutableSortedDictionary.Create<string, CautionPage>(StringComparer.Ordinal),
        ImmutableSortedDictionary.Create<string, Role>(StringComparer.Ordinal));
}
