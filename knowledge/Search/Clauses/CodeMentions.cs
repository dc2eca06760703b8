using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>Finds what looks like a display code: one or two letters and one or two digits.</summary>
internal static class CodeMentions
{
    private static readonly string[] Refrigerants = ["R32", "R22"];

    public static ImmutableArray<string> In(ImmutableArray<Word> words)
    {
        var codes = ImmutableArray.CreateBuilder<string>();
        for (var i = 0; i < words.Length; i++)
        {
            var text = words[i].Text;
            if (text.Length == 1 && char.IsAsciiLetter(text[0]) && i > 0 && words[i - 1].Text is "code" or "error"
                && i + 1 < words.Length && words[i + 1].Text.All(char.IsDigit))
                text += words[i + 1].Text;
            text = text.ToUpperInvariant();
            if (IsCode(text) && !codes.Contains(text))
                codes.Add(text);
        }
        return codes.ToImmutable();
    }

    private static bool IsCode(string text) =>
        text.Length is 2 or 3 && char.IsAsciiLetter(text[0]) && char.IsAsciiDigit(text[^1])
        && text.All(char.IsAsciiLetterOrDigit) && !Refrigerants.Contains(text);
}
