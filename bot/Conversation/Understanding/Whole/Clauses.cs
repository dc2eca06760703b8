using System.Collections.Immutable;
using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>
/// Cuts a message into the pieces that each tell one thing, at stops and at the small words of its language.
/// </summary>
internal sealed class Clauses
{
    private const string Phrase = "words-between";

    // A stop inside a number or a word is none; a stroke parts codes, not units.
    private const string Stops =
        @"[;!?\n\r…]+|[,.](?=\s|$)|(?<=[^\d\s]),|(?<=[A-Za-z]\d)\s*[/&+]\s*(?=[A-Za-z]{1,2}\d)|\s[-–—]\s|\s[&+]\s";

    private const double Joins = -1;

    private readonly Regex _between;

    public Clauses(Library library)
    {
        string numbers = string.Join('|', Numbers(library, value => value > 0));
        ImmutableHashSet<string> joining = [.. Numbers(library, value => value == Joins)];
        IEnumerable<string> words = library.Phrases.Template(Phrase)
            .Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(word => joining.Contains(Regex.Escape(word))
                ? $@"{Regex.Escape(word)}(?!\s(?:{numbers})\b)"
                : Regex.Escape(word));
        _between = new Regex($@"{Stops}|\s(?:{string.Join('|', words)})\s",
            RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
    }

    /// <summary>The phrases that are such lists.</summary>
    public static ImmutableArray<string> Ids { get; } = [Phrase];

    public ImmutableArray<string> Cut(string text) =>
        [.. _between.Split(text).Select(piece => piece.Trim())
            .Where(piece => !PlainWords.IsEmpty(piece) || piece.Contains('-'))];

    // "treinta y cinco" is one number, and stays in one piece.
    private static IEnumerable<string> Numbers(Library library, Func<double, bool> which) =>
        (library.Language?.Numbers ?? ImmutableSortedDictionary<string, double>.Empty).Where(pair => which(pair.Value))
            .Select(pair => Regex.Escape(pair.Key));
}
