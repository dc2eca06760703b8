using System.Collections.Immutable;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Recognises the lines of the form in any spelling: U–V as U-V, "u to v", UV, V-U.</summary>
internal sealed class AskedLabels
{
    private readonly ImmutableArray<(string[] Parts, string Label)> _spellings;

    public AskedLabels(IEnumerable<string> labels)
    {
        ImmutableArray<(string[] Parts,
            string Label)> lines = [.. labels.Distinct().Select(label => (PartsOf(label), label))];
        // "Suction pipe" before "suction".
        _spellings = [.. lines.SelectMany(line => Spellings(line.Parts, lines).Select(parts => (parts, line.Label)))
            .OrderByDescending(spelling => spelling.parts.Length)];
    }

    private static IEnumerable<string[]> Spellings(string[] parts, ImmutableArray<(string[] Parts, string Label)> lines)
    {
        if (parts.Length == 0)
        {
            yield break;
        }
        yield return parts;
        if (parts.Length == 2 && parts.All(part => part.Length <= 2))
        {
            yield return [parts[1], parts[0]];
        }
        // One word of several will do if no other line has it.
        foreach (string word in parts.Where(part => parts.Length > 1 && part.Length > 2))
        {
            if (lines.Count(line => line.Parts.Contains(word)) == 1)
            {
                yield return [word];
            }
        }
    }

    public LabelMention? At(TokenList tokens, int first)
    {
        foreach ((string[] parts, string label) in _spellings)
        {
            if (EndOf(tokens, first, parts) is { } end)
            {
                return new LabelMention(first, end, label, LabelKind.Asked);
            }
        }
        return null;
    }

    private static int? EndOf(TokenList tokens, int first, string[] parts)
    {
        Token token = tokens[first];
        bool oneToken = token.Kind == TokenKind.Code
            && PartsOf(token.Text) is var said && said.Length == parts.Length
            && said.Zip(parts, LabelParts.Means).All(same => same);
        bool glued = parts.Length > 1 && parts.All(part => part.Length == 1) && token.Lower == string.Concat(parts);
        return oneToken || glued ? first + 1
            : parts.Length == 1 ? OneEnd(tokens, first, parts[0])
            : PartsEnd(tokens, first, parts);
    }

    // A single letter is a label only if it cannot be a unit or an article.
    private static int? OneEnd(TokenList tokens, int first, string part)
    {
        Token token = tokens[first];
        bool same = token.Kind is TokenKind.Word or TokenKind.Code && LabelParts.Means(token, part);
        bool letter = part.Length == 1 && (tokens[first - 1].IsNumber || !char.IsUpper(token.Text[0]));
        return same && !letter ? first + 1 : null;
    }

    private static int? PartsEnd(TokenList tokens, int first, string[] parts)
    {
        int at = first;
        for (int i = 0; i < parts.Length; i++)
        {
            at += i > 0 && LabelParts.Joins(tokens, at) ? 1 : 0;
            if (!LabelParts.Means(tokens[at], parts[i]))
            {
                return null;
            }
            at++;
        }
        return at;
    }

    private static string[] PartsOf(string label) =>
        new string([.. label.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' ')])
        .Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(part => part != "to").ToArray();
}
