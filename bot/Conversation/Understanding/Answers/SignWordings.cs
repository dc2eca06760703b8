using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>The words in which the signs of danger of a page are spoken of, so that one may be denied.</summary>
internal sealed class SignWordings
{
    private static readonly string[] Parts = [",", " or "];

    private readonly ImmutableArray<string> signs, answers, asked;

    public SignWordings(CheckPage page)
    {
        ImmutableArray<AnswerOption> stops = [.. page.Outcomes.Where(outcome => page.Stop.Contains(outcome.Id))];
        signs = Wordings(stops.SelectMany(outcome => outcome.SaidAs));
        answers = Wordings(stops.Select(outcome => outcome.Answer.Text));
        asked = Wordings([page.Ask.Text]);
    }

    /// <summary>
    /// Whether words name a sign: in its own words, by the thing that an answer ends in, or as a piece of the question.
    /// </summary>
    /// <remarks>"Hot" of "plug very hot" is no sign, nor is "loud" of "loud hiss".</remarks>
    public bool Name(ImmutableArray<string> said)
    {
        if (said.IsEmpty) return false;
        string words = string.Join(' ', said);
        return Name($" {words} ") || Name($" {words.TrimEnd('s')} ");
    }

    private bool Name(string words) => signs.Contains(words)
        || answers.Any(answer => answer.EndsWith(words, StringComparison.Ordinal))
        || asked.Any(piece => piece.StartsWith(words, StringComparison.Ordinal)
            || piece.EndsWith(words, StringComparison.Ordinal));

    private static ImmutableArray<string> Wordings(IEnumerable<string> said) =>
        [.. said.SelectMany(wording => wording.Split(Parts, StringSplitOptions.None))
            .Select(wording => $" {string.Join(' ', PlainWords.Telling(wording))} ")];
}
