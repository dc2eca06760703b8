using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Numbers and letters in a message that are no display code: times, counts, terminals with a reading, names of series.
/// </summary>
internal static class NoCodes
{
    private static readonly ImmutableHashSet<string> Numbers =
        ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "fifteen", "twenty", "thirty"];

    private static readonly ImmutableHashSet<string> Counted =
    [
        "sec", "secs", "second", "seconds", "min", "mins", "minute", "minutes", "hr", "hrs", "hour", "hours", "day",
        "days", "week", "weeks", "month", "months",
        "year", "years", "numbers", "digits", "rooms", "heads", "units", "degrees", "degree", "percent",
        "bar", "bars", "psi", "psig", "kpa", "mpa", "v", "volt", "volts", "amp", "amps", "ohm", "ohms", "kohm", "kohms",
        "megohm", "megohms", "hz", "micron", "microns", "kw", "kg", "rpm",
    ];

    // Laughter is no L0L.
    private static readonly string[] Laughter = ["lol", "lolz"];

    private static readonly string[] Aged = ["am", "im", "aged", "age", "turned"];

    // What the words of another language mean that stand before a code, and behind it.
    private static readonly string[] Showing = ["display", "shows", "code"];
    private static readonly string[] Looks = ["flashing", "steady"];

    private static readonly string[] Pointing = ["the", "that", "this"];
    private static readonly string[] Describing =
        ["little", "small", "big", "green", "red", "amber", "yellow", "orange", "blue", "white", "wall", "other",
            "first", "same", "inside", "outside", "old", "new"];

    private static readonly string[] Shining =
        ["blink", "blinks", "blinking", "flash", "flashes", "flashing", "time", "times"];
    private static readonly string[] Terminals = ["l1", "l2", "l3"];
    private static readonly string[] Reading =
        ["to", "is", "was", "reads", "g", "gnd", "ground", "earth", "pe", "n", "neutral", .. Terminals];

    /// <summary>
    /// The text with a blank for each sign of them, as long as it was: "after ten min", "I am 84", "the little green
    /// one", "L1 120", "Brenholt WS".
    /// </summary>
    public static string Blanked(TurnDraft turn, string text) =>
        Without(SeriesNames.Blanked(turn.Library, text), (words, at) =>
            Laughter.Contains(words[at].Word) || IsCount(words, at) || IsAge(words, at) || IsLampsName(words, at)
                || IsTerminal(words, at) || IsSmallWord(turn.Library.Language, words, at));

    /// <summary>The text with a blank for each sign of a terminal that a reading follows.</summary>
    public static string WithoutTerminals(string text) => Without(text, IsTerminal);

    private static string Without(string text, Func<ImmutableArray<(string Word, int End)>, int, bool> isNone)
    {
        ImmutableArray<(string Word, int End)> words = PlainWords.Placed(text);
        char[]? left = null;
        for (int at = 0; at < words.Length; at++)
        {
            if (!isNone(words, at)) continue;
            left ??= text.ToCharArray();
            int from = at == 0 ? 0 : words[at - 1].End;
            left.AsSpan(from, words[at].End - from).Fill(' ');
        }

        return left is null ? text : new string(left);
    }

    private static bool IsCount(ImmutableArray<(string Word, int End)> words, int at) =>
        (IsNumber(words[at].Word) || Numbers.Contains(words[at].Word)) && at + 1 < words.Length
            && Counted.Contains(words[at + 1].Word);

    private static bool IsAge(ImmutableArray<(string Word, int End)> words, int at) =>
        at > 0 && IsNumber(words[at].Word) && Aged.Contains(words[at - 1].Word);

    // "Es muy ruidoso", "parpadea la luz": where another language is spoken, its small words are no ES and no LA,
    // unless a display is said to show them.
    private static bool IsSmallWord(LanguagePage? language, ImmutableArray<(string Word, int End)> words, int at)
    {
        const int longest = 2;
        return language is { IsMain: false } && at + 1 < words.Length && words[at].Word.Length <= longest
            && language.SmallWords.Contains(words[at].Word)
            && !(at > 0 && Means(language, words[at - 1].Word, Showing)) && !Means(language, words[at + 1].Word, Looks);
    }

    private static bool Means(LanguagePage language, string word, string[] meanings) =>
        language.Readings.Any(pair => PlainWords.Joined(pair.Words) == word && meanings.Contains(pair.Means));

    // "The green one blinks once" keeps its "one": there it may be counted.
    private static bool IsLampsName(ImmutableArray<(string Word, int End)> words, int at)
    {
        const int reach = 3;
        if (words[at].Word is not ("one" or "ones") || (at + 1 < words.Length && Shining.Contains(words[at + 1].Word)))
            return false;
        for (int before = at - 1; before >= 0 && before >= at - reach; before--)
        {
            if (Pointing.Contains(words[before].Word)) return true;
            if (!Describing.Contains(words[before].Word)) return false;
        }

        return false;
    }

    // Of several, as units show an L1 too: "L1 24 degrees" may be that.
    private static bool IsTerminal(ImmutableArray<(string Word, int End)> words, int at) => IsLeg(words, at)
        && Enumerable.Range(0, words.Length).Any(other => words[other].Word != words[at].Word && IsLeg(words, other));

    private static bool IsLeg(ImmutableArray<(string Word, int End)> words, int at)
    {
        if (!Terminals.Contains(words[at].Word)) return false;
        int next = at + 1;
        while (next < words.Length && Reading.Contains(words[next].Word)) next++;
        return next < words.Length && words[next].Word.Length > 1 && IsNumber(words[next].Word);
    }

    private static bool IsNumber(string word) => word.All(char.IsAsciiDigit);
}
