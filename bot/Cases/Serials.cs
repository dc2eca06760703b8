using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Knowledge.Serials;

namespace DxAssistant.Cases;

/// <summary>The serial numbers by which cases are found again.</summary>
internal static class Serials
{
    /// <summary>Those that events write down, bare, each once.</summary>
    public static ImmutableArray<string> In(IEnumerable<CaseEvent> events) =>
    [
        .. events.OfType<UnitNoted>().Select(unit => SerialPattern.Bare(unit.Serial ?? ""))
            .Where(bare => bare.Length > 0)
            .Distinct(StringComparer.Ordinal),
    ];
}
