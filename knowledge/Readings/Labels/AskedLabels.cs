using System.Collections.Immutable;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Recognises the lines of the form in any spelling: U–V as U-V, "u to v", UV, V-U.</summary>
internal sealed class AskedLabels
{
    private readonly List<(string[] Parts, string Label)> _spellings = [];

    public AskedLabels(ImmutableArray<string> labels)
    {
        foreach (string label in labels)
        {
            string[] parts = PartsOf(label);
            if (parts.Length > 0)
            {
                _spellings.Add((parts, label));
            }
            if (parts.Length == 2 && parts.All(part => part.Length <= 2))
            {
                _spellings.Add(([parts[1], parts[0]], label));
            }
            if (parts.Length > 1 && parts[0].Length > 2
                && labels.Count(other => PartsOf(other).FirstOrDefault() == parts[0]) == 1)
            {
                _spellings.Add(([parts[0]], label));
            }
        }
        // "Suction pressure" before "suction".
        _spellings.Sort((one, other) => other.Parts.Length.CompareTo(one.Parts.Length));
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
            && PartsOf(token.Text).SequenceEqual(parts, StringComparer.Ordinal);
        bool glued = parts.Length > 1 && parts.All(part => part.Length == 1) && token.Lower == string.Concat(parts);
        return oneToken || glued ? first + 1
            : parts.Length == 1 ? OneEnd(tokens, first, parts[0])
            : PartsEnd(tokens, first, parts);
    }

    // A single letter is a label only if it cannot be a unit or an article.
    private static int? OneEnd(TokenList tokens, int first, string part)
    {
        Token token = tokens[first];
        bool same = token.Kind is TokenKind.Word or TokenKind.Code && token.Lower == part;
        bool letter = part.Length == 1 && (tokens[first - 1].IsNumber || !char.IsUpper(token.Text[0]));
        return same && !letter ? first + 1 : null;
    }

    private static int? PartsEnd(TokenList tokens, int first, string[] parts)
    {
        int at = first;
        for (int i = 0; i < parts.Length; i++)
        {
            at += i > 0 && LabelParts.Joins(tokens, at) ? 1 : 0;
            if (LabelParts.Of(tokens[at]) != parts[i])
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
