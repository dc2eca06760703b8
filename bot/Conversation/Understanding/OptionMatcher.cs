using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Finds the option that typed words mean, or none: in doubt it is asked again rather than guessed.</summary>
internal static class OptionMatcher
{
    private static readonly ImmutableHashSet<string> Negations =
        ["no", "not", "never", "without", "isnt", "doesnt", "dont", "didnt", "wasnt", "arent", "cant", "wont",
            "nothing", "none", "neither"];

    // Words that put what was seen into another time or into doubt.
    private static readonly ImmutableHashSet<string> Elsewhen =
        ["if", "maybe", "perhaps", "was", "were", "before", "yesterday", "earlier", "gone", "stopped", "away", "used",
            "except", "but"];

    // The most words of a sentence in which a label is looked for.
    private const int ShortSentence = 12;

    private static readonly char[] Stops = [',', ';', '.', ':'];

    /// <summary>
    /// The option meant by its label, its number in the list or its key; null when none or more than one fits.
    /// </summary>
    public static Option? Find(string text, ImmutableArray<Option> options, LanguagePage? language = null)
    {
        string said = PlainWords.Joined(text);
        if (said.Length == 0) return null;
        return Exactly(text, options) ?? ByNumber(said, options) ?? ByWords(text, options, language)
            ?? (IsMain(language) ? InSentence(text, options) : null);
    }

    /// <summary>The option whose label or key the text is, or the first clause of whose label.</summary>
    public static Option? Exactly(string text, ImmutableArray<Option> options)
    {
        string said = PlainWords.Joined(text);
        return Only(options.Where(option => PlainWords.Joined(option.Label) == said || option.Key == text.Trim()))
            ?? Only(options.Where(option => PlainWords.Joined(FirstClause(option.Label)) == said));
    }

    private static string FirstClause(string label) => label.Split(Stops)[0];

    private static Option? ByNumber(string said, ImmutableArray<Option> options) =>
        int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
        && number >= 1 && number <= options.Length
            ? options[number - 1]
            : null;

    // Each telling word of the answer stands in the label, and answer and label agree on whether that is denied.
    private static Option? ByWords(string text, ImmutableArray<Option> options, LanguagePage? language)
    {
        ImmutableArray<string> said = Telling(text, language);
        if (said.Length == 0) return null;
        return Only(options.Where(option => Fits(said, option.Label, language)));
    }

    // The one option of whose label a part of two telling words or more stands in a short sentence: "yes, there is a
    // burning smell".
    private static Option? InSentence(string text, ImmutableArray<Option> options)
    {
        ImmutableArray<string> words = PlainWords.Of(text);
        if (words.Length > ShortSentence || text.Contains('?') || words.Any(Negations.Contains)
            || words.Any(Elsewhen.Contains))
            return null;
        string said = $" {string.Join(' ', PlainWords.Telling(text))} ";
        return Only(options.Where(option => Parts(option.Label)
            .Any(part => said.Contains($" {part} ", StringComparison.Ordinal))));
    }

    // What a label says in each of its clauses, and on either side of an "or".
    private static IEnumerable<string> Parts(string label) =>
        from clause in label.Split(Stops)
        from part in clause.Split(" or ").Append(clause)
        let words = PlainWords.Telling(part)
        where words.Length > 1 && !words.Any(Negations.Contains)
        select string.Join(' ', words);

    /// <summary>The words that carry meaning, those that deny included.</summary>
    public static ImmutableArray<string> Telling(string text, LanguagePage? language) => IsMain(language)
        ? PlainWords.Telling(text)
        : [.. PlainWords.Of(text).Where(word => Denies(word, language) || !language.SmallWords.Contains(word))];

    private static bool IsMain([NotNullWhen(false)] LanguagePage? language) => language is null or { IsMain: true };

    /// <summary>Whether a label begins with a denial, and so is what "none of it" means.</summary>
    public static bool BeginsDenied(string label, LanguagePage? language) =>
        PlainWords.Of(label) is [var first, ..] && Denies(first, language);

    /// <summary>Whether a word denies what it stands beside.</summary>
    public static bool Denies(string word, LanguagePage? language) =>
        IsMain(language) ? Negations.Contains(word) : language.Not.Contains(word);

    private static bool Fits(ImmutableArray<string> said, string label, LanguagePage? language)
    {
        ImmutableArray<ImmutableArray<string>> spokenOf =
            [.. label.Split(Stops).Select(clause => Telling(clause, language))
                .Where(clause => said.Any(word => Holds(clause, word)))];
        return said.All(word => spokenOf.Any(clause => Holds(clause, word)))
            && said.Any(word => Denies(word, language)) == spokenOf.Any(
                clause => clause.Any(word => Denies(word, language)));
    }

    private static bool Holds(ImmutableArray<string> clause, string word) => clause.Any(known => SameWord(word, known));

    // "clogs" is meant by "clog", "seated" by "seat": one is the other with a short ending.
    private static bool SameWord(string left, string right)
    {
        if (left == right) return true;
        (string shorter, string longer) = left.Length < right.Length ? (left, right) : (right, left);
        return shorter.Length >= 4 && longer.Length - shorter.Length <= 3
            && longer.StartsWith(shorter, StringComparison.Ordinal);
    }

    private static Option? Only(IEnumerable<Option> options)
    {
        Option? found = null;
        foreach (Option option in options)
        {
            if (found is not null) return null;
            found = option;
        }

        return found;
    }
}
