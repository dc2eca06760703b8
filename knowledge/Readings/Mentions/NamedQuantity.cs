using System.Collections.Frozen;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>The quantity that the words before a bare number name: "voltage is 231", "frequency: 60".</summary>
internal static class NamedQuantity
{
    private const int MostJoints = 3;

    private static readonly FrozenDictionary<string, QuantityKind> Kinds = new Dictionary<string, QuantityKind>
    {
        ["voltage"] = QuantityKind.Voltage, ["volts"] = QuantityKind.Voltage,
        ["current"] = QuantityKind.Current, ["amperage"] = QuantityKind.Current, ["amps"] = QuantityKind.Current,
        ["resistance"] = QuantityKind.Resistance, ["capacitance"] = QuantityKind.Capacitance,
        ["frequency"] = QuantityKind.Frequency, ["pressure"] = QuantityKind.GaugePressure,
        ["temperature"] = QuantityKind.Temperature, ["temp"] = QuantityKind.Temperature,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Joints =
        new[] { "is", "was", "are", "were", "reads", "measures", "shows", "=", ":", "about", "around", "roughly" }
            .ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Finds it; null when none is named right before the number.</summary>
    /// <remarks>"Current 5" behind other words may be the fifth of something: only a word that joins, or nothing before
    /// the name, makes it one.</remarks>
    public static QuantityKind? Before(TokenList tokens, Mention mention)
    {
        int at = mention.First - 1;
        while (at > 0 && mention.First - 1 - at < MostJoints && Joints.Contains(tokens[at].Lower))
        {
            at--;
        }
        bool joined = at < mention.First - 1 || at == 0;
        return joined && at >= 0 && Kinds.TryGetValue(tokens[at].Lower, out QuantityKind kind) ? kind : null;
    }
}
