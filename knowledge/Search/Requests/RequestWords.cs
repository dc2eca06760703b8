using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>A message as a row of words, each also known by the glossary's words for it.</summary>
internal sealed class RequestWords
{
    private readonly ImmutableArray<Word> words;
    private readonly ImmutableArray<string>[] keys;
    private readonly ulong[] marks;

    /// <param name="endsAsQuestion">A question mark ends the message.</param>
    public RequestWords(ImmutableArray<Word> words, ImmutableArray<Token> tokens, bool endsAsQuestion)
    {
        (this.words, EndsAsQuestion) = (words, endsAsQuestion);
        var concepts = tokens.Where(token => token.Role != TokenRole.Filler)
            .ToLookup(token => token.Position, token => "=" + token.Stem);
        (keys, marks) = (new ImmutableArray<string>[words.Length], new ulong[words.Length]);
        for (var at = 0; at < keys.Length; at++)
        {
            keys[at] = [words[at].Text, WordPattern.Any, .. IsNumber(at) ? [WordPattern.Number] : Array.Empty<string>(),
                .. ActForms.BaseOf(words[at].Text) is { } act
                    ? [act]
                    : Array.Empty<string>(), .. concepts[at].Distinct(StringComparer.Ordinal)];
            foreach (var key in keys[at])
                marks[at] |= WordPattern.MarkOf(key);
        }
    }

    public int Count => words.Length;

    public bool EndsAsQuestion { get; }

    /// <summary>
    /// All that a pattern may call the word at a place: the word, any word, a number, "=stem" for terms of the
    /// glossary.
    /// </summary>
    public ImmutableArray<string> KeysAt(int at) => keys[at];

    /// <summary>The <see cref="WordPattern.MarkOf"/> of all keys at a place together.</summary>
    public ulong MarksAt(int at) => marks[at];

    public bool Is(int at, string pattern) => keys[at].Contains(pattern);

    private bool IsNumber(int at) => char.IsAsciiDigit(words[at].Text[0]);

    public string this[int at] => at >= 0 && at < words.Length ? words[at].Text : "";
}
