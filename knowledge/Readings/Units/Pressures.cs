using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Readings.Units;

/// <summary>The kinds that are all called pressure.</summary>
internal static class Pressures
{
    public static bool IsPressure(this QuantityKind kind) =>
        kind is QuantityKind.Pressure or QuantityKind.GaugePressure or QuantityKind.AbsolutePressure;
}
