using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Conversation.Messages;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>The words that stand for a command or a plain yes, no or done: lists in the phrase file.</summary>
internal sealed class CommandWords(PhraseBook phrases)
{
    private static readonly ImmutableArray<(string Phrase, CommandWord Word)> Commands =
    [
        ("words-back", CommandWord.Back), ("words-why", CommandWord.Why), ("words-skip", CommandWord.Skip),
        ("words-cannot", CommandWord.Cannot), ("words-unsure", CommandWord.Unsure), ("words-help", CommandWord.Help),
        ("words-again", CommandWord.Again), ("words-start-over", CommandWord.StartOver),
        ("words-stop-here", CommandWord.StopHere),
    ];

    // Words around a command that change nothing: "sorry, I really don't know".
    private const string Polite = "words-polite";

    /// <summary>How a command is asked for: "can i skip this".</summary>
    private const string Asking = "words-ask-may";

    /// <summary>How it begins what somebody else says: "she says none of that".</summary>
    private const string SaidBy = "words-said-by";

    // What follows an answer and changes nothing: "none that i can see".
    private const string AsFar = "words-as-far";

    // How what is seen or heard is told: "i can hear it running".
    private const string Senses = "words-senses";

    // How people begin while they think: "uh", "well".
    private const string Fillers = "words-fillers";

    // What turns round what was said before it.
    private const string But = "words-but";

    // How a reason begins: "i cant see it, it is on the roof", but not "i cant see it moving".
    private const string Because = "words-because";

    private const string BookAct = "words-book-act", BookWhom = "words-book-whom", BookBeside = "words-book-beside";

    // What angry people say of a machine beside what it does.
    private const string Anger = "words-anger";

    private const string AskingHelp = "words-asking-help", Doubt = "words-doubt", WasWrong = "words-was-wrong";

    /// <summary>How a correction of the last answer begins: "no wait, it was free".</summary>
    private const string Correcting = "words-correcting";

    /// <summary>Says that the case is about another unit than it is walked as.</summary>
    public const string WrongUnit = "words-wrong-unit";

    /// <summary>How it is asked what to do about something: "what do i do if it leaks".</summary>
    public const string WhatIf = "words-what-if";

    // What may stand between a beginning and what follows it.
    private static readonly char[] Pauses = [' ', ',', '.', ';', ':', '!', '-', '–', '—'];

    private readonly FrozenDictionary<string, FrozenSet<string>> _lists = Lists
        .ToFrozenDictionary(id => id, id => PhraseLists.Of(phrases, id).ToFrozenSet());

    /// <summary>The phrases that are lists of words.</summary>
    public static ImmutableArray<string> Lists { get; } =
        [.. Commands.Select(command => command.Phrase), "words-yes", "words-no", "words-done", "words-reading",
            "words-gone", "words-gone-at-last", "words-fine", "words-sound", "words-none-of-it", "words-one-sense",
            "words-plain-yes", "words-plain-no", "words-soft-no", "words-locked", "words-cured", "words-cools-now",
            "words-heats-now", "words-not-cured", "words-redo", "words-leaks-again", "words-repaired",
            "words-of-gauges", "words-misread", "words-instead-of", "words-at-rest", "words-on-the-move",
            "words-less-than", "words-or-more", WhatIf, Asking, BookAct, BookWhom, BookBeside, SaidBy, AsFar, Senses,
            Fillers, But, Because, Correcting, WrongUnit, Polite, Anger, AskingHelp, Doubt, WasWrong,
            FaultQuestions.Beginnings];

    /// <summary>The command that the whole message is, and nothing else; null when it is none.</summary>
    public CommandWord? Find(string text) =>
        FindPlain(text) ?? (After(Asking, text) is { Length: > 0 } asked ? FindAsked(asked) : null)
            ?? (Books(text) ? CommandWord.StopHere : null);

    // "Just book me a technician", "i need someone to come out": somebody is to come, and nothing else is said.
    private bool Books(string text)
    {
        ImmutableArray<string> said = PlainWords.Of(text);
        return said.Any(_lists[BookAct].Contains) && said.Any(_lists[BookWhom].Contains)
            && said.All(word => _lists[BookAct].Contains(word) || _lists[BookWhom].Contains(word)
                || _lists[BookBeside].Contains(word));
    }

    // "Can i not say" asks for nothing.
    private CommandWord? FindAsked(string text) =>
        FindPlain(text) is { } word and not (CommandWord.Cannot or CommandWord.Unsure) ? word : null;

    private CommandWord? FindPlain(string text)
    {
        string said = PlainWords.Joined(text), bare = Bare(text);
        foreach ((string phrase, CommandWord word) in Commands)
            if (_lists[phrase].Contains(said)) return word;
        foreach ((string phrase, CommandWord word) in Commands)
            if (bare.Length > 0
                && _lists[phrase].Any(entry => Bare(entry) == bare
                    && (bare.Contains(' ', StringComparison.Ordinal) || entry == bare)))
                return word;
        return null;
    }

    // "Not really" is not "not right now": of a single word nothing may be left out on both sides.
    private string Bare(string text) =>
        string.Join(' ', PlainWords.Of(text).Where(word => !_lists[Polite].Contains(word)));

    /// <summary>A message without its words of anger.</summary>
    public string WithoutAnger(string text) => Without(Anger, text);

    /// <summary>A message without what asks for help beside it: "what do i do".</summary>
    public string WithoutAsking(string text) => Without(AskingHelp, text);

    /// <summary>
    /// A message without the words that say that its teller is not sure, "no" for "probably not"; null when it has
    /// none, or nothing else.
    /// </summary>
    public string? WithoutDoubt(string text) => Without(Doubt, text) is { Length: > 0 } sure
        && sure != PlainWords.Joined(text) ? (sure == "not" ? "no" : sure) : null;

    /// <summary>
    /// What a message says beside a title, and beside that it was wrong; null when the title does not stand in it.
    /// </summary>
    public string? Beside(string title, string text)
    {
        string said = $" {PlainWords.Joined(text)} ", named = $" {PlainWords.Joined(title)} ";
        int at = said.IndexOf(named, StringComparison.Ordinal);
        return at < 0 ? null : Without(WasWrong, $"{said[..at]} {said[(at + named.Length)..]}");
    }

    /// <summary>A message without what stands in a list, longest first.</summary>
    public string Without(string phrase, string text)
    {
        string calm = $" {PlainWords.Joined(text)} ";
        foreach (string angry in _lists[phrase].OrderByDescending(words => words.Length)
            .ThenBy(words => words, StringComparer.Ordinal))
            calm = calm.Replace($" {angry} ", " ", StringComparison.Ordinal);
        return calm.Trim();
    }

    /// <summary>
    /// What a message corrects an answer to, and whether it takes that answer back whatever it was; null when it does
    /// not begin so, or goes on with nothing.
    /// </summary>
    /// <remarks>
    /// What takes an answer back stands for itself: "i misread the code" says what was misread. A single word is too
    /// common a beginning.
    /// </remarks>
    public (string Anew, bool TakesBack)? Corrected(string text)
    {
        (string Anew, bool TakesBack)? corrected = CorrectedOnce(text);
        while (corrected is var (anew, takesBack) && CorrectedOnce(anew) is var (further, alsoBack))
            corrected = (further, takesBack || alsoBack);
        return corrected;
    }

    private (string Anew, bool TakesBack)? CorrectedOnce(string text) =>
        TakenBack(text) is { } taken ? (taken, true)
        : After(Correcting, text) is { Length: > 0 } anew ? (anew, false) : null;

    // "Actually I misread, it was 235": words that change nothing may come first.
    private string? TakenBack(string text)
    {
        const int most = 2;
        string rest = text;
        for (int polite = 0; polite <= most; polite++)
        {
            if (_lists["words-back"].Where(entry => entry.Contains(' ', StringComparison.Ordinal))
                .OrderByDescending(entry => entry.Length)
                .Select(entry => AfterAPause(Behind(rest, [entry])))
                .FirstOrDefault(found => found is not null) is { } anew)
                return anew;
            if (PlainWords.Placed(rest) is not [var (word, end), _, ..] || !_lists[Polite].Contains(word)) return null;
            rest = rest[end..].TrimStart(Pauses);
        }

        return null;
    }

    // "I misread, it was 235", but not "i misread the code".
    private static string? AfterAPause(string? behind) =>
        behind?.TrimStart(' ') is [var sign, ..] && Pauses.Contains(sign)
            && behind.TrimStart(Pauses) is { Length: > 0 } rest ? rest : null;

    /// <summary>
    /// What a message says after the longest beginning that a list holds; null when it has none, or nothing after it.
    /// </summary>
    public string? After(string phrase, string text) => Behind(text, _lists[phrase])?.TrimStart(Pauses);

    private static string? Behind(string text, IEnumerable<string> beginnings)
    {
        ImmutableArray<(string Word, int End)> words = PlainWords.Placed(text);
        string said = string.Join(' ', words.Select(word => word.Word));
        string? begun = beginnings.Where(entry => said.StartsWith(entry + ' ', StringComparison.Ordinal))
            .MaxBy(entry => entry.Length);
        return begun is null ? null : text[words[begun.Count(sign => sign == ' ')].End..];
    }

    /// <summary>
    /// Whether the first clause of a label is one word of a list: "Yes, it is free", but not "No air comes out".
    /// </summary>
    public bool Begins(string phrase, string label) =>
        PlainWords.Of(label.Split(',')[0]) is [var only] && _lists[phrase].Contains(only);

    /// <summary>
    /// A message without what people begin with while they think; null when it begins with nothing of the kind.
    /// </summary>
    public string? WithoutFillers(string text)
    {
        string rest = text;
        while (After(Fillers, rest) is { Length: > 0 } further) rest = further;
        return rest.Length < text.Length ? rest : null;
    }

    /// <summary>
    /// The command that a message begins with, which goes on with the reason: "i cant see it, it is on the roof"; null
    /// when it begins with none, or goes on otherwise.
    /// </summary>
    public CommandWord? BegunWith(string text)
    {
        const int fewest = 3;
        if (PlainWords.Of(text).Any(_lists[But].Contains)) return null;
        foreach (CommandWord word in (CommandWord[])[CommandWord.Cannot, CommandWord.Unsure])
        {
            string phrase = Commands.First(command => command.Word == word).Phrase;
            if (Behind(text, _lists[phrase].Where(entry => entry.Count(sign => sign == ' ') >= fewest - 1)) is { } rest
                && (AfterAPause(rest) is not null || After(Because, rest) is not null)) return word;
        }

        return null;
    }

    /// <summary>An answer without who gives it and how far they can see; null when neither is said.</summary>
    public string? WithoutTeller(string text)
    {
        string said = PlainWords.Joined(text);
        string bare = Before(AsFar, After(SaidBy, said) ?? said);
        return bare.Length > 0 && bare != said ? bare : null;
    }

    /// <summary>A message without the words that say that something is seen or heard; null when it has none.</summary>
    public string? WithoutSenses(string text) =>
        Without(Senses, text) is { Length: > 0 } bare && bare != PlainWords.Joined(text) ? bare : null;

    // "That I can see right now" ends in two of them.
    private string Before(string phrase, string said)
    {
        while (_lists[phrase].Where(entry => said.EndsWith(' ' + entry, StringComparison.Ordinal))
            .MaxBy(entry => entry.Length) is { } end)
            said = said[..^end.Length].TrimEnd();
        return said;
    }

    /// <summary>Whether a message ends in something of a list.</summary>
    public bool EndsIn(string phrase, string text)
    {
        string said = PlainWords.Joined(text);
        return _lists[phrase].Any(entry => said.EndsWith(' ' + entry, StringComparison.Ordinal));
    }

    /// <summary>Whether something of a list stands anywhere in a message.</summary>
    public bool Holds(string phrase, string text) => Find(phrase, text) is not null;

    /// <summary>Where something of a list stands in a message, the longest first; null when nothing does.</summary>
    public (int From, int To)? Find(string phrase, string text)
    {
        ImmutableArray<(string Word, int End)> said = PlainWords.Placed(text);
        foreach (string entry in _lists[phrase].OrderByDescending(entry => entry.Length)
            .ThenBy(entry => entry, StringComparer.Ordinal))
        {
            string[] run = entry.Split(' ');
            for (int at = 0; at + run.Length <= said.Length; at++)
                if (run.Index().All(word => said[at + word.Index].Word == word.Item))
                    return (at == 0 ? 0 : said[at - 1].End, said[at + run.Length - 1].End);
        }

        return null;
    }

    /// <summary>The first entry of a list.</summary>
    public string First(string phrase) => PhraseLists.Of(phrases, phrase).First();

    /// <summary>Whether the whole message stands in a list.</summary>
    public bool Means(string phrase, string text) => _lists[phrase].Contains(PlainWords.Joined(text));
}
