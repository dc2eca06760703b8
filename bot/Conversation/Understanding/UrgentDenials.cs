using System.Collections.Immutable;

namespace DxAssistant.Conversation.Understanding;

/// <summary>English words that deny what a clause tells of.</summary>
internal static class UrgentDenials
{
    public static ImmutableArray<string> All { get; } = ["no", "not", "never", "without", "isnt", "doesnt", "dont",
        "didnt", "wasnt", "nothing", "neither", "nobody", "noone"];
}
