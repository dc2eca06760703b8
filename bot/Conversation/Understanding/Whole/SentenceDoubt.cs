using System.Collections.Immutable;
using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>
/// A doubt that is of all its sentence goes on to tell, until it says that it is sure: "not sure but the fan stands
/// still, 42 bar, and the filter is definitely clean".
/// </summary>
internal sealed partial class SentenceDoubt(Library library, Clauses clauses)
{
    private const string OfAll = "words-doubt-of-all", Sure = "words-sure";

    private readonly LanguagePage? _language = library.Language;
    private readonly ImmutableArray<string[]> _ofAll = PhraseLists.Runs(library.Phrases, OfAll),
        _sure = PhraseLists.Runs(library.Phrases, Sure);

    /// <summary>The pieces of a message that such a doubt reaches.</summary>
    public ImmutableHashSet<string> Pieces(string text) => [.. Sentence().Split(text).SelectMany(Reached)];

    private IEnumerable<string> Reached(string sentence) => Begins(sentence) is not { } from ? []
        : clauses.Cut(sentence[from..]).TakeWhile(piece => !IsSure(piece));

    // Where the doubt begins: with the sentence, or behind a pause in it: what went before stays sure.
    private int? Begins(string sentence)
    {
        ImmutableArray<(string Word, int End)> words = PlainWords.Placed(sentence);
        for (int at = 0; at < words.Length; at++)
        {
            int from = at == 0 ? 0 : words[at - 1].End;
            if ((at == 0 || Pause().IsMatch(sentence[from..])) && _ofAll.Any(run => Stands(words, at, run)))
                return from;
        }

        return null;
    }

    private bool IsSure(string piece)
    {
        ImmutableArray<(string Word, int End)> words = PlainWords.Placed(piece);
        return Enumerable.Range(0, words.Length).Any(at => _sure.Any(run => Stands(words, at, run))
            && (at == 0 || !OptionMatcher.Denies(words[at - 1].Word, _language)));
    }

    private static bool Stands(ImmutableArray<(string Word, int End)> words, int at, string[] run) =>
        at + run.Length <= words.Length && run.Index().All(word => words[at + word.Index].Word == word.Item);

    [GeneratedRegex(@"[!?;\n\r…]+|\.(?=\s|$)", RegexOptions.CultureInvariant)]
    private static partial Regex Sentence();

    [GeneratedRegex(@"^\s*[,:–—-]", RegexOptions.CultureInvariant)]
    private static partial Regex Pause();
}
