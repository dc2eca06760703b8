using System.Collections.Immutable;

namespace DxAssistant.Conversation.State;

/// <summary>Empty collections in ordinal order, so that nothing depends on a language's alphabet.</summary>
internal static class Sorted
{
    public static ImmutableSortedSet<string> Set { get; } = ImmutableSortedSet.Create<string>(StringComparer.Ordinal);

    public static ImmutableSortedDictionary<string, T> Map<T>() =>
        ImmutableSortedDictionary.Create<string, T>(StringComparer.Ordinal);
}
