using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>The modes that a unit runs in, as pages write them.</summary>
public static class UnitModes
{
    public static ImmutableArray<string> All { get; } = ["cooling", "drying", "fan", "heating"];
}
