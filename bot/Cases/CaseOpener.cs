using System.Collections.Immutable;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases;

/// <summary>Who opened a case.</summary>
public static class CaseOpener
{
    /// <summary>Who said the first thing in a log; null when nothing was said.</summary>
    public static string? Of(ImmutableArray<StoredEvent> log) =>
        log.Select(stored => stored.Event).OfType<Said>().FirstOrDefault()?.By;
}
