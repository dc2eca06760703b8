using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Takes the outcome of a check: tapped, said in its own words, or as readings.</summary>
internal sealed class CheckAnswer(CommandWords words) : Answer
{
    // How likely an outcome is at a unit without a fault for it to be what "looks sound" means; common practice, no source.
    private const double Sound = 0.8;

    private static readonly char[] Stops = [',', '.', ';', '!', '\n'];

    public override QuestionKind Kind => QuestionKind.Check;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (CheckQuestion.Page(turn, question.Subject) is not { } page) return false;
        int place = turn.Library.Graph.Find(page.Id)!.IndexOf(new OutcomeId(key));
        if (place < 0) return false;
        AnswerOption outcome = page.Outcomes[place];
        turn.Say(SegmentKind.Understood, "understood-answer",
            Slot.Of("check", page.Title), Slot.Of("answer", outcome.Answer));
        turn.Happen(new OutcomeSeen(
            page.Id.Value, key, Certain(place, page.Outcomes.Length), null, outcome.Answer.Text));
        if (page.TellsMode && ModeWords.IsMode(key)) turn.Happen(new ModeStated(key));
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text)
    {
        if (CheckQuestion.Page(turn, question.Subject) is not { } page) return false;
        if (page.Readings.IsEmpty) return base.Hear(turn, question, text) || HearSound(turn, question, page, text) || HearYesOrNo(turn, question, page, text) || HearNone(turn, question, page, text) || HearWithoutTitle(turn, question, page, text) || HearSaidAs(turn, question, page, text) || HearWarning(turn, question, page, text) || HearMode(turn, question, page, text);
        if (IsNumberOfAnswer(page, text)) return NumberAlone.AskForUnit(turn, text, MarketUnits.Of(page.Readings[0].Unit, turn.View.Series?.Market), page.Readings[0].Where.Place);
        if (IsOfGauges(page, text))
        {
            turn.Say(SegmentKind.Notice, "notice-of-gauges");
            return true;
        }

        return OptionMatcher.Exactly(text, question.Options) is { } exact
            ? Choose(turn, question, exact.Key)
            : ReadingIntake.Hear(turn, page, text) || base.Hear(turn, question, text);
    }

    public override bool Fill(TurnDraft turn, OpenQuestion question, ImmutableArray<FilledField> fields)
    {
        if (CheckQuestion.Page(turn, question.Subject) is not { Readings.IsEmpty: false } page) return false;
        ReadingIntake.Fill(turn, page, fields);
        return true;
    }

    // "1" where answers are listed may be the first of them or 1 V.
    private static bool IsNumberOfAnswer(CheckPage page, string text) =>
        page.Readings.Length == 1 && NumberAlone.Is(text) && text.Trim()[0] - '0' <= page.Outcomes.Length;

    // "SH 14", "14 K superheat": what a gauge works out by itself, and no more.
    private bool IsOfGauges(CheckPage page, string text)
    {
        const int most = 2;
        return page.Readings.Any(field => field.Unit.Kind is QuantityKind.GaugePressure or QuantityKind.AbsolutePressure)
            && ((words.After("words-of-gauges", text) is [>= '0' and <= '9', ..] rest && PlainWords.Of(rest).Length <= most)
                || (text.TrimStart() is [>= '0' and <= '9', ..] && words.EndsIn("words-of-gauges", text) && PlainWords.Of(text).Length <= most + 1));
    }

    // "Yeah", "nope", "yes all ok", "no nothing like that", where one answer begins with that yes or no and what follows says the same.
    private bool HearYesOrNo(TurnDraft turn, OpenQuestion question, CheckPage page, string text) =>
        Begins(turn, question, page, text, "words-plain-yes", "words-sound") || Begins(turn, question, page, text, "words-plain-no", "words-none-of-it")
        || Begins(turn, question, page, text, "words-plain-no", "words-none-of-it", "words-soft-no");

    // "Not really" is a no too, but danger is not waved away with a guess.
    private bool Begins(TurnDraft turn, OpenQuestion question, CheckPage page, string text, string word, string goingOn, string? softer = null)
    {
        string said = softer ?? word;
        if (question.Options.Where(option => words.Begins(word, option.Label)).ToArray() is not [var only]) return false;
        bool tells = words.Means(said, text) && (softer is null || (page.Stop.IsEmpty && !page.Needed));
        bool tellsSound = (words.After(said, text) is { Length: > 0 } rest && words.Means(goingOn, rest)) || (softer is null && !page.Stop.IsEmpty && words.Means(goingOn, text));
        return (tells || (tellsSound && only.Key == SoundOf(turn, page)?.Id.Value) || GoesOnAs(turn, question, page, text, said, only)) && Choose(turn, question, only.Key);
    }

    // "Yes, it is all free": a yes or no, and the same answer in its words. Where the two do not agree, or more is told, it is asked again.
    private bool GoesOnAs(TurnDraft turn, OpenQuestion question, CheckPage page, string text, string word, Option only) => page.Stop.IsEmpty
        && words.After(word, text) is { Length: > 0 } rest && OptionMatcher.Find(rest, question.Options, turn.Library.Language) == only;

    // "No smoke, no smell, nothing burning", "sparks? no": signs of danger of which each is denied, in words of one sign each, so that
    // none beside them is.
    private bool HearNone(TurnDraft turn, OpenQuestion question, CheckPage page, string text)
    {
        if (page.Stop.IsEmpty || NoneOf(question, page) is not { } none) return false;
        var signs = new SignWordings(page);
        string[] pieces = text.Split(Stops, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        bool isDenied = text.Split('?') is [var asked, var answer] ? words.Means("words-plain-no", answer) && signs.Name(PlainWords.Of(asked))
            : pieces.Length > 0 && pieces.All(piece => IsDenied(turn, PlainWords.Of(piece), signs));
        return isDenied && Choose(turn, question, none.Key);
    }

    private static Option? NoneOf(OpenQuestion question, CheckPage page) =>
        question.Options.FirstOrDefault(option => page.Outcomes.Any(outcome => outcome.Id.Value == option.Key) && !page.Stop.Contains(new OutcomeId(option.Key)));

    // A denial, then words that stand so in the wording of one sign; then perhaps another denial.
    private bool IsDenied(TurnDraft turn, ImmutableArray<string> said, SignWordings signs)
    {
        int[] denials = [.. Enumerable.Range(0, said.Length).Where(at => IsDenial(turn, said[at]))];
        if (denials is not [0, ..]) return false;
        return denials.Zip(denials.Skip(1).Append(said.Length)).All(piece => piece.Second == piece.First + 1 ? IsNo(said) : signs.Name(said[(piece.First + 1)..piece.Second]));
    }

    // "Not" may be what is left of "not really".
    private bool IsNo(ImmutableArray<string> said) => said is [var only] && (words.Means("words-plain-no", only) || words.Means("words-none-of-it", only));

    // "Can't touch it" denies no sign.
    private static bool IsDenial(TurnDraft turn, string word) => word is not ("cant" or "wont") && OptionMatcher.Denies(word, turn.Library.Language);

    // "Plug is home" names the thing that is asked about, which the answer "home and clean" does not.
    private bool HearWithoutTitle(TurnDraft turn, OpenQuestion question, CheckPage page, string text)
    {
        ImmutableArray<string> title = PlainWords.Of(page.Title.Text), said = PlainWords.Of(text);
        string[] rest = [.. said.Where(word => !title.Contains(word))];
        return !text.Contains('?', StringComparison.Ordinal) && rest.Length < said.Length && rest.Any(word => Tells(turn, word))
            && base.Hear(turn, question, string.Join(' ', rest));
    }

    // "It's clean" at the filters is what who has looked already tells as "filter clean".
    private bool HearSaidAs(TurnDraft turn, OpenQuestion question, CheckPage page, string text)
    {
        if (!page.Stop.IsEmpty || text.Contains('?', StringComparison.Ordinal) || WithoutTitle(turn, page, text) is not { Length: > 0 } said) return false;
        AnswerOption[] meant = [.. page.Outcomes.Where(outcome => outcome.SaidAs.Any(wording => WithoutTitle(turn, page, wording).SequenceEqual(said)))];
        return meant is [var only] && question.Options.Any(option => option.Key == only.Id.Value) && Choose(turn, question, only.Id.Value);
    }

    // "Yes, a bit at the kitchen tap" where an answer is needed: what warns counts in whatever words, unless something in them is denied.
    private bool HearWarning(TurnDraft turn, OpenQuestion question, CheckPage page, string text)
    {
        ImmutableArray<string> said = PlainWords.Of(text);
        if (!page.Needed || text.Contains('?', StringComparison.Ordinal) || said.Any(word => OptionMatcher.Denies(word, turn.Library.Language))) return false;
        AnswerOption? sound = SoundOf(turn, page);
        if (sound is not null && OptionMatcher.Find(words.After("words-plain-yes", text) ?? text, question.Options, turn.Library.Language)?.Key == sound.Id.Value) return false;
        AnswerOption[] warnings = [.. page.Outcomes.Where(outcome => outcome != sound && (TellsYes(outcome, text) || outcome.SaidAs.Any(wording => $" {string.Join(' ', said)} ".Contains($" {PlainWords.Joined(wording)} ", StringComparison.Ordinal))))];
        return warnings is [var only] && question.Options.Any(option => option.Key == only.Id.Value) && Choose(turn, question, only.Id.Value);
    }

    private bool TellsYes(AnswerOption outcome, string text) =>
        words.Begins("words-plain-yes", outcome.Answer.Text) && words.After("words-plain-yes", text) is { Length: > 0 };

    // "In heating" where the mode is asked for.
    private bool HearMode(TurnDraft turn, OpenQuestion question, CheckPage page, string text) => page.TellsMode
        && ModeWords.Find(turn.Library.Phrases, text) is { } mode && question.Options.Any(option => option.Key == mode) && Choose(turn, question, mode);

    private static string[] WithoutTitle(TurnDraft turn, CheckPage page, string text)
    {
        ImmutableArray<string> title = PlainWords.Of(page.Title.Text);
        return [.. OptionMatcher.Telling(text, turn.Library.Language).Where(word => !title.Any(known => known == word || known + 's' == word || known == word + 's')).Order(StringComparer.Ordinal)];
    }

    // "No filter" is no "no, full of dust".
    private bool Tells(TurnDraft turn, string word) => word.Any(char.IsLetter) && !OptionMatcher.Denies(word, turn.Library.Language)
        && !words.Means("words-plain-yes", word) && !words.Means("words-plain-no", word);

    // "Looks sound" and "none of it" are what a sound unit shows, where that is one answer. Danger is never waved away so.
    private bool HearSound(TurnDraft turn, OpenQuestion question, CheckPage page, string text)
    {
        bool isSound = words.Means("words-sound", text);
        if (!page.Stop.IsEmpty || (!isSound && !words.Means("words-none-of-it", text) && !words.Means("words-one-sense", text))) return false;
        return SoundOf(turn, page) is { } sound && (isSound || OptionMatcher.BeginsDenied(sound.Answer.Text, turn.Library.Language)) && Choose(turn, question, sound.Id.Value);
    }

    // What a unit without a fault shows, where that is one answer.
    private static AnswerOption? SoundOf(TurnDraft turn, CheckPage page)
    {
        ImmutableArray<double> atASoundUnit = turn.Library.Graph.Find(page.Id)!.Row(FaultId.NoneOfThese);
        int place = atASoundUnit.IndexOf(atASoundUnit.Max());
        return atASoundUnit[place] >= Sound ? page.Outcomes[place] : null;
    }

    private static ImmutableArray<double> Certain(int place, int count) =>
        [.. Enumerable.Range(0, count).Select(index => index == place ? 1.0 : 0.0)];
}
