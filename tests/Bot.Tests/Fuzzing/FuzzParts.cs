using System.Collections.Immutable;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>All parts, by name.</summary>
internal static class FuzzParts
{
    public static ImmutableSortedDictionary<string, Func<IFuzzPart>> All { get; } =
        new Dictionary<string, Func<IFuzzPart>>
    {
        ["activities"] = () => new ActivityFuzz(),
        ["bodies"] = () => new BodyFuzz(),
        ["codes"] = () => new CodeFuzz(),
        ["messages"] = () => new MessageFuzz(),
        ["pages"] = () => new PageFuzz(),
        ["readings"] = () => new ReadingFuzz(),
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);
}
