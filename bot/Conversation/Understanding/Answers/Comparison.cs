using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>
/// An answer that compares with a figure, said without the unit that stands on its button: "less than 1", "under 1" for
/// "Less than 1 MΩ".
/// </summary>
internal static class Comparison
{
    private const string LessThan = "words-less-than", OrMore = "words-or-more";

    public static Option? Find(CommandWords words, CheckPage page, OpenQuestion question, string text) =>
        question.Options.Where(option => page.Readings.Any(line => IsSame(words, option.Label, text, line.Unit.Symbol)))
            .ToArray() is [var only] ? only : null;

    private static bool IsSame(CommandWords words, string label, string text, string unit) =>
        (words.After(LessThan, label) is { Length: > 0 } less && words.After(LessThan, text) is { Length: > 0 } saidLess
            && IsFigure(less, saidLess, unit))
        || (words.EndsIn(OrMore, label) && words.EndsIn(OrMore, text)
            && IsFigure(words.Without(OrMore, label), words.Without(OrMore, text), unit));

    private static bool IsFigure(string shown, string said, string unit) =>
        PlainWords.Joined(said) is var figure && figure.Any(char.IsAsciiDigit)
            && (PlainWords.Joined(shown) == figure
                || PlainWords.Joined(shown) == $"{figure} {PlainWords.Joined(unit)}");
}
