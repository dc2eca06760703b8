using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Cases;

/// <summary>What a case is called in a list: the first words or code it was given.</summary>
public static class CaseTitle
{
    /// <summary>The longest title, in characters.</summary>
    public const int Longest = 80;

    /// <summary>The title that the events of one turn give a case; null when they give none.</summary>
    public static string? Of(IEnumerable<CaseEvent> events)
    {
        string? words = events.Select(WordsOf).FirstOrDefault(found => !string.IsNullOrWhiteSpace(found));
        return words is null ? null : Shorten(words.Replace('\0', ' ').Trim());
    }

    /// <summary>The title of a whole log: the first that one of its turns gives.</summary>
    internal static string? OfAll(IEnumerable<StoredEvent> log) =>
        log.GroupBy(e => e.TurnId, StringComparer.Ordinal).Select(turn => Of(turn.Select(e => e.Event)))
            .FirstOrDefault(title => title is not null);

    private static string? WordsOf(CaseEvent happened) => happened switch
    {
        Said { Body: MessageBody.Words words } => words.Text,
        SymptomReported reported => reported.Words,
        CodeReported reported => reported.Code,
        _ => null,
    };

    private static string Shorten(string words) =>
        words.Length <= Longest ? words : string.Concat(words.AsSpan(0, Cut(words)), "…");

    // Never between the two halves of one character.
    private static int Cut(string words) =>
        char.IsHighSurrogate(words[Longest - 2]) ? Longest - 2 : Longest - 1;
}
