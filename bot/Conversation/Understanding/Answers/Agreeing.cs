using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>What goes on after a yes or a no and says the same: "no, it stays silent", "yes it moves".</summary>
/// <remarks>
/// Nothing but words of the question, of moving and of standing still may stand there, so that nothing else that is
/// told is lost. A question that asks for a standstill or in the negative is left out: there a yes goes on as a no
/// does.
/// </remarks>
internal static class Agreeing
{
    private const string Still = "words-at-rest", Moving = "words-on-the-move";

    /// <param name="asked">The title of the check and its question.</param>
    /// <param name="text">The message, which begins with the yes or the no.</param>
    /// <param name="rest">What goes on behind it.</param>
    public static bool GoesOn(CommandWords words, LanguagePage? language, string asked, string text, string rest,
        bool isYes)
    {
        if (rest.Contains('?', StringComparison.Ordinal) || Denies(words, language, asked)) return false;
        ImmutableArray<string> known = PlainWords.Of(asked);
        return PlainWords.Of(rest).All(word => known.Contains(word) || words.Means(Still, word)
            || words.Means(Moving, word) || OptionMatcher.Denies(word, language))
            && Denies(words, language, rest) != isYes && (isYes || !IsTwice(words, language, text));
    }

    private static bool Denies(CommandWords words, LanguagePage? language, string text) =>
        PlainWords.Of(text).Any(word => words.Means(Still, word) || OptionMatcher.Denies(word, language));

    // "No, it does not stay silent": the one takes back the other.
    private static bool IsTwice(CommandWords words, LanguagePage? language, string text)
    {
        const int near = 2;
        string[] said = [.. PlainWords.Of(text).Skip(1)];
        return Enumerable.Range(0, said.Length).Any(at => OptionMatcher.Denies(said[at], language)
            && said.Skip(at + 1).Take(near)
                .Any(word => words.Means(Still, word) && !OptionMatcher.Denies(word, language)));
    }
}
