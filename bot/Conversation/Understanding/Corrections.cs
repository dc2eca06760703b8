using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Conversation.Told;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Corrections of what was answered: "I measured wrong, it is 10.5k", "no wait, it was free", "I was wrong, it was thin
/// frost".
/// </summary>
internal sealed class Corrections(Commands commands, CommandWords words, FrozenDictionary<QuestionKind, Answer> answers,
    Danger danger, WholeReader whole)
{
    private const string InsteadOf = "words-instead-of";

    private static readonly char[] Stops = [',', ';', '.', '!'];

    /// <summary>
    /// Corrects the last answer where the message fits its question, else the latest check with such an answer.
    /// </summary>
    /// <param name="heard">
    /// What is left to understand: the message, or what follows a beginning that tells nothing.
    /// </param>
    /// <returns>False when nothing was corrected.</returns>
    public bool Hear(TurnDraft turn, string text, out string heard)
    {
        heard = text;
        if (!danger.IsTold(text)
            && (NamedReading.Correct(turn, words, text) || CorrectsNamed(turn, text) || CorrectsTold(turn, text)))
            return true;
        if (commands.IsWrongUnit(text) || turn.State.Before is not { } before
            || commands.Corrected(text) is not var (anew, takesBack) || danger.IsTold(anew))
            return false;
        if (commands.Find(anew) is { } word)
        {
            Obey(turn, word, takesBack);
            return true;
        }

        if (!takesBack && IsBare(anew)) return false;
        heard = anew;
        if (Fits(turn, before.Question, anew)) return AnswerAnew(turn, anew);
        // A voltage that was misread on the way to a safe state takes that step back before anything else.
        return (takesBack && before.Question is { Kind: QuestionKind.Access } && AnswerAnew(turn, anew))
            || CorrectsEarlier(turn, anew)
            || (takesBack && before.Question is { Kind: QuestionKind.Check } && AnswerAnew(turn, anew));
    }

    // "I was wrong, not sure" is not sure of what was answered last.
    private void Obey(TurnDraft turn, CommandWord word, bool takesBack)
    {
        if (takesBack && word is not (CommandWord.Back or CommandWord.StartOver)) commands.Obey(turn, CommandWord.Back);
        commands.Obey(turn, word);
    }

    // "Sorry, no" answers what is asked now.
    private bool IsBare(string text) => commands.IsYesOrNo(text) || text.Trim().Length < 2;

    private bool AnswerAnew(TurnDraft turn, string anew)
    {
        commands.Obey(turn, CommandWord.Back);
        return turn.State.Question is { Kind: QuestionKind.Check or QuestionKind.Access } asked
            && answers[asked.Kind].Hear(turn, asked, anew);
    }

    private static bool Fits(TurnDraft turn, OpenQuestion? asked, string text) => asked is { Kind: QuestionKind.Check }
        && (OptionMatcher.Find(text, asked.Options, turn.Library.Language) is not null
            || (!asked.Fields.IsEmpty
                && ReadingParser.Parse(turn.Heard(text), ReadingContext.None) is not ReadingResult.NotUnderstood));

    // "Air filter: full of dust" where it was said to be clean: the check by its title, and another of its answers.
    private bool CorrectsNamed(TurnDraft turn, string text)
    {
        // What is told at a repair is what it did, and no correction.
        if (turn.State is not { Question: { Kind: QuestionKind.Check or QuestionKind.Access } open,
            Given.IsEmpty: true } || text.Contains('?', StringComparison.Ordinal))
            return false;
        foreach (SeenResult result in turn.View.Results.Reverse().Where(result => result.Check != open.Subject))
        {
            CheckPage page = turn.Library.Checks[new CheckId(result.Check)];
            if (page.Readings.IsEmpty && words.Beside(page.Title.Text, text) is { Length: > 0 } told
                && OtherAnswer(turn, page, result, told) is { } meant)
                return AnswerNamed(turn, page, meant, told);
        }

        return false;
    }

    // "Filter was dirty, not clean": what was found, in the words of its page, and what it was not.
    private bool CorrectsTold(TurnDraft turn, string text)
    {
        if (turn.State is not { Question.Kind: QuestionKind.Check
            or QuestionKind.Access, Given.IsEmpty: true, Unconfirmed.IsEmpty: true }
            || text.Contains('?', StringComparison.Ordinal) || WithoutDenied(text) is not { } told
            || whole.Read(turn, told) is not { Items: [{ Thing: ToldThing.Outcome { Doubtful: false } seen }],
                Rest.IsEmpty: true, Unclear.IsEmpty: true }
            || turn.State.Question.Subject == seen.Check
            || turn.View.Results.FirstOrDefault(result => result.Check == seen.Check) is not { } known
            || known.Outcome == seen.Seen)
            return false;
        CheckPage page = turn.Library.Checks[new CheckId(seen.Check)];
        return page.Readings.IsEmpty && AnswerNamed(turn, page, seen.Seen, told);
    }

    // What stands before and behind what is denied, which goes on to the next stop; null when nothing is denied.
    private string? WithoutDenied(string text)
    {
        if (words.Find(InsteadOf, text) is not var (from, to)) return null;
        int stop = text.AsSpan(to).IndexOfAny(Stops);
        return $"{text[..from].TrimEnd().TrimEnd(Stops)} {(stop < 0 ? "" : text[(to + stop + 1)..])}".Trim();
    }

    // Another answer, or the same one more surely; where danger is asked for, and where an answer is needed, a half one
    // corrects nothing.
    private string? OtherAnswer(TurnDraft turn, CheckPage page, SeenResult result, string told)
    {
        string? bare = words.WithoutDoubt(told);
        if (bare is not null && (!page.Stop.IsEmpty || page.Needed)) return null;
        return OptionMatcher.Find(bare ?? told, Options(page), turn.Library.Language)?.Key is { } meant
            && (meant != result.Outcome || (bare is null && result.Weights.Max() < 1)) ? meant : null;
    }

    // The step is chosen anew; but a way to an access state that is half gone is gone to its end.
    private bool AnswerNamed(TurnDraft turn, CheckPage page, string meant, string told)
    {
        OpenQuestion named = turn.State.Question!
            with { Kind = QuestionKind.Check, Subject = page.Id.Value, Options = Options(page) };
        if (turn.State.Approach is null) turn.Happen(new CheckReopened(page.Id.Value));
        return CheckAnswer.Choose(turn, named, meant, words.WithoutDoubt(told) is not null);
    }

    private static ImmutableArray<Option> Options(CheckPage page) =>
        [.. page.Outcomes.Select(outcome => new Option(outcome.Id.Value, outcome.Answer.Text))];

    // No number: it is one of a list that is no longer in sight. Nor half-way through the readings of another check.
    private bool CorrectsEarlier(TurnDraft turn, string text)
    {
        if (turn.State is not { Question: not null, Given.IsEmpty: true } || !text.Any(char.IsLetter)) return false;
        foreach (SeenResult result in turn.View.Results.Reverse())
        {
            CheckPage page = turn.Library.Checks[new CheckId(result.Check)];
            if (page.Readings.IsEmpty && OtherAnswer(turn, page, result, text) is { } meant)
                return AnswerNamed(turn, page, meant, text);
        }

        return false;
    }
}
