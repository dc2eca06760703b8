using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Conversation.Sheets;

/// <summary>Words as they come in over a channel.</summary>
public static class SaidWords
{
    /// <summary>The longest message taken, in characters.</summary>
    public const int Longest = 4000;

    public static string TooLong { get; } = string.Create(
        CultureInfo.InvariantCulture,
        $"That message is too long. Send at most {Longest} characters; nothing of it was kept.");

    /// <summary>Takes words; control characters become blanks, because they cannot be seen or meant.</summary>
    /// <param name="question">The question that was shown to the person; null where the channel cannot tell.</param>
    public static bool TryRead(
        string? text, [NotNullWhen(true)] out MessageBody? body, [NotNullWhen(false)] out string? problem,
        string? question = null)
    {
        body = null;
        problem = text?.Length > Longest ? TooLong : null;
        if (problem is null) body = new MessageBody.Words(Clean(text ?? ""), question);
        return body is not null;
    }

    /// <summary>The text with control characters and broken characters turned into blanks.</summary>
    public static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            bool unseen = Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control || rune == Rune.ReplacementChar;
            if (unseen) clean.Append(' ');
            else clean.Append(rune.ToString());
        }

        return clean.ToString().Trim();
    }
}
