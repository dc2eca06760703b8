using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Cases;

/// <summary>What a case is called in a list: the words it began with.</summary>
public static class CaseTitle
{
    /// <summary>The longest title, in characters.</summary>
    public const int Longest = 80;

    /// <summary>The title that the events of one turn give a case; null when they give none.</summary>
    /// <remarks>Words that were understood as a symptom or a code, never a greeting or a tap on the opening question.</remarks>
    public static string? Of(IEnumerable<CaseEvent> events)
    {
        var turn = events.ToList();
        bool understood = turn.Any(e => e is SymptomReported or CodeReported);
        if (!understood) return null;
        string? words = turn.OfType<Said>().Select(s => s.Body).OfType<MessageBody.Words>().FirstOrDefault()?.Text
            ?? turn.OfType<SymptomReported>().FirstOrDefault()?.Words
            ?? turn.OfType<CodeReported>().FirstOrDefault()?.Look;
        return string.IsNullOrWhiteSpace(words) ? null : Shorten(words.Trim());
    }

    private static string Shorten(string words) =>
        words.Length <= Longest ? words : string.Concat(words.AsSpan(0, Cut(words)), "…");

    // Never between the two halves of one character.
    private static int Cut(string words) =>
        char.IsHighSurrogate(words[Longest - 2]) ? Longest - 2 : Longest - 1;
}
