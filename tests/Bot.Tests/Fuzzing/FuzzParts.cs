using System.Collections.Immutable;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>All parts, by name.</summary>
internal static class FuzzParts
{
    public static ImmutableSortedDictionary<string, Func<IFuzzPart>> All { get; } = new Dictionary<string, Func<IFuzzPart>>
    {
<<<<<<< HEAD
        ["codes"] = () => new CodeFuzz(),
=======
        ["activities"] = () => new ActivityFuzz(),
        ["bodies"] = () => new BodyFuzz(),
        ["codes"] = () => new CodeFuzz(),
        ["messages"] = () => new MessageFuzz(),
>>>>>>> a525d74 (Feed messages, activities and bodies; soak; say how to shard)
        ["pages"] = () => new PageFuzz(),
        ["readings"] = () => new ReadingFuzz(),
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);
}
