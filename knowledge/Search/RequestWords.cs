using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>A message as a row of words, each also known by the glossary's words for it.</summary>
internal sealed class RequestWords
{
    private readonly ImmutableArray<Word> words;
    private readonly ILookup<int, string> concepts;

    /// <param name="endsAsQuestion">A question mark ends the message.</param>
    public RequestWords(ImmutableArray<Word> words, ImmutableArray<Token> tokens, bool endsAsQuestion)
    {
        (this.words, EndsAsQuestion) = (words, endsAsQuestion);
        concepts = tokens.Where(token => token.Role != TokenRole.Filler).ToLookup(token => token.Position, token => "=" + token.Stem);
    }

    public int Count => words.Length;

    public bool EndsAsQuestion { get; }

    /// <summary>Whether a word is as written, or, for a pattern "=stem", stands for that term of the glossary.</summary>
    public bool Is(int at, string pattern) =>
        pattern[0] == '=' ? concepts[at].Contains(pattern) : words[at].Text == pattern;

    public bool IsNumber(int at) => char.IsAsciiDigit(words[at].Text[0]);

    public string this[int at] => at >= 0 && at < words.Length ? words[at].Text : "";
}
