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
    // How likely an outcome is at a unit without a fault for it to be what "looks sound" means; common practice, no
    // source.
    private const double LooksSound = 0.8;

    private const string SoftNo = "words-soft-no";

    private static readonly char[] Stops = [',', '.', ';', '!', '\n'];

    public override QuestionKind Kind => QuestionKind.Check;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key) =>
        Choose(turn, question, key, isDoubted: false);

    /// <summary>Takes an outcome that was said.</summary>
    /// <param name="isDoubted">Believed as far as the pages trust what is told with doubt.</param>
    public static bool Choose(TurnDraft turn, OpenQuestion question, string key, bool isDoubted)
    {
        if (CheckQuestion.Page(turn, question.Subject) is not { } page) return false;
        int place = turn.Library.Graph.Find(page.Id)!.IndexOf(new OutcomeId(key));
        if (place < 0) return false;
        AnswerOption outcome = page.Outcomes[place];
        turn.Say(SegmentKind.Understood, isDoubted ? "understood-answer-doubted" : "understood-answer",
            Slot.Of("check", page.Title), Slot.Of("answer", outcome.Answer));
        turn.Happen(new OutcomeSeen(
            page.Id.Value, key,
            Weights(place, page.Outcomes.Length, isDoubted ? turn.Library.Settings.DoubtTrusted : 1), null,
            isDoubted ? turn.Speaker.Text("answer-doubted", Slot.Of("answer", outcome.Answer)) : outcome.Answer.Text)
        {
            Leaves = StateLeft.By(turn, page),
        });
        if (page.TellsMode && !isDoubted && ModeWords.IsMode(key)) turn.Happen(new ModeStated(key));
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text)
    {
        if (CheckQuestion.Page(turn, question.Subject) is not { } page) return false;
        if (page.Readings.IsEmpty) return HearOutcome(turn, question, page, text);
        if (IsNumberOfAnswer(page, text))
            return NumberAlone.AskForUnit(turn, text, MarketUnits.Of(page.Readings[0].Unit, turn.View.Series?.Market),
                page.Readings[0].Where.Place);
        if (IsOfGauges(page, text))
        {
            turn.Say(SegmentKind.Notice, "notice-of-gauges");
            return true;
        }

        return OptionMatcher.Exactly(text, question.Options) is { } exact
            ? Choose(turn, question, exact.Key)
            : Comparison.Find(words, page, question, text) is { } compared ? Choose(turn, question, compared.Key)
            : HearReading(turn, page, text) || HearLabel(turn, question, text);
    }

    // "I think light comes through", "maybe home": an answer, but not a sure one. Where danger is asked for, a half one
    // only warns.
    private bool HearOutcome(TurnDraft turn, OpenQuestion question, CheckPage page, string text)
    {
        string? bare = words.WithoutDoubt(text);
        if ((Meant(turn, question, page, text)
            ?? (bare is null ? null : Meant(turn, question, page, bare))) is not { } key)
            return false;
        if (page.Stop.IsEmpty && !page.Needed) return Choose(turn, question, key, IsDoubted(text));
        if (bare is null || page.Stop.Contains(new OutcomeId(key)))
            return Choose(turn, question, key, isDoubted: false);
        Misfit.Say(turn);
        return true;
    }

    private bool IsDoubted(string text) => words.WithoutDoubt(text) is not null || words.Means(SoftNo, text);

    // "About 12 ohm, I think": it counts as far as what is told with doubt is trusted.
    private bool HearReading(TurnDraft turn, CheckPage page, string text)
    {
        turn.IsDoubted = words.WithoutDoubt(text) is not null;
        return ReadingIntake.Hear(turn, page, text);
    }

    // The labels of a check with readings, tapped or typed: "maybe open".
    private bool HearLabel(TurnDraft turn, OpenQuestion question, string text) =>
        (OptionMatcher.Find(text, question.Options, turn.Library.Language)
            ?? (words.WithoutDoubt(text) is { } bare
                ? OptionMatcher.Find(bare, question.Options, turn.Library.Language)
                : null)) is { } meant
        && Choose(turn, question, meant.Key, IsDoubted(text));

    // The outcome that words mean beyond doubt, whether of a check or of the words.
    private string? Meant(TurnDraft turn, OpenQuestion question, CheckPage page, string text) =>
        OptionMatcher.Find(text, question.Options, turn.Library.Language)?.Key ?? Sound(turn, page, text)
            ?? YesOrNo(turn, question, page, text)
        ?? None(turn, question, page, text) ?? WithoutTitle(turn, question, page, text)
        ?? SaidAs(turn, question, page, text) ?? Warning(turn, question, page, text)
        ?? Mode(turn, question, page, text);

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
        return LoneFinding.IsOfGauges(page)
            && ((words.After("words-of-gauges", text) is [>= '0' and <= '9', ..] rest
                && PlainWords.Of(rest).Length <= most)
                || (text.TrimStart() is [>= '0' and <= '9', ..] && words.EndsIn("words-of-gauges", text)
                    && PlainWords.Of(text).Length <= most + 1));
    }

    // "Yeah", "nope", "yes all ok", "no nothing like that", where one answer begins with that yes or no and what
    // follows says the same.
    private string? YesOrNo(TurnDraft turn, OpenQuestion question, CheckPage page, string text) =>
        Begun(turn, question, page, text, "words-plain-yes", "words-sound")
            ?? Begun(turn, question, page, text, "words-plain-no", "words-none-of-it")
        ?? Begun(turn, question, page, text, SoftNo, "words-none-of-it");

    private string? Begun(TurnDraft turn, OpenQuestion question, CheckPage page, string text, string word,
        string goingOn)
    {
        bool isSoft = word == SoftNo;
        if (OnlyOne(question, isSoft ? "words-plain-no" : word) is not { } only) return null;
        // "Not really" alone is a no too, but danger is not waved away with a guess.
        bool tells = words.Means(word, text) && (!isSoft || (page.Stop.IsEmpty && !page.Needed));
        bool tellsSound = (words.After(word, text) is { Length: > 0 } rest && words.Means(goingOn, rest))
            || (!isSoft && !page.Stop.IsEmpty && words.Means(goingOn, text));
        return tells || (tellsSound && only.Key == SoundOf(turn, page)?.Id.Value)
            || GoesOnAs(turn, question, page, text, word, only) ? only.Key : null;
    }

    // The one answer that begins with a yes, or with a no.
    private Option? OnlyOne(OpenQuestion question, string word) =>
        question.Options.Where(option => words.Begins(word, option.Label)).ToArray() is [var only] ? only : null;

    // "Yes, it is all free": a yes or no, and the same answer in its words. Where the two do not agree, or more is
    // told, it is asked again.
    private bool GoesOnAs(TurnDraft turn, OpenQuestion question, CheckPage page, string text, string word,
        Option only) => page.Stop.IsEmpty
        && words.After(word, text) is { Length: > 0 } rest
        && (OptionMatcher.Find(rest, question.Options, turn.Library.Language) == only
            || Agreeing.GoesOn(words, turn.Library.Language, $"{page.Title.Text} {question.Text}", text, rest,
                isYes: word == "words-plain-yes"));

    // "No smoke, no smell, nothing burning", "sparks? no": signs of danger of which each is denied, in words of one
    // sign each, so that none beside them is.
    private string? None(TurnDraft turn, OpenQuestion question, CheckPage page, string text)
    {
        if (page.Stop.IsEmpty || NoneOf(question, page) is not { } none) return null;
        var signs = new SignWordings(page);
        string[] pieces = text.Split(Stops, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        bool isDenied = text.Split('?') is [var asked, var answer]
            ? words.Means("words-plain-no", answer) && signs.Name(PlainWords.Of(asked))
            : pieces.Length > 0 && pieces.All(piece => IsDenied(turn, PlainWords.Of(piece), signs));
        return isDenied ? none.Key : null;
    }

    private static Option? NoneOf(OpenQuestion question, CheckPage page) =>
        question.Options.FirstOrDefault(option => page.Outcomes.Any(outcome => outcome.Id.Value == option.Key)
            && !page.Stop.Contains(new OutcomeId(option.Key)));

    // A denial, then words that stand so in the wording of one sign; then perhaps another denial.
    private bool IsDenied(TurnDraft turn, ImmutableArray<string> said, SignWordings signs)
    {
        int[] denials = [.. Enumerable.Range(0, said.Length).Where(at => IsDenial(turn, said[at]))];
        if (denials is not [0, ..]) return false;
        return denials.Zip(denials.Skip(1).Append(said.Length))
            .All(piece => piece.Second == piece.First
                + 1 ? IsNo(said) : signs.Name(said[(piece.First + 1)..piece.Second]));
    }

    // "Not" may be what is left of "not really".
    private bool IsNo(ImmutableArray<string> said) =>
        said is [var only] && (words.Means("words-plain-no", only) || words.Means("words-none-of-it", only));

    // "Can't touch it" denies no sign.
    private static bool IsDenial(TurnDraft turn, string word) =>
        word is not ("cant" or "wont") && OptionMatcher.Denies(word, turn.Library.Language);

    // "Plug is home" names the thing that is asked about, which the answer "home and clean" does not.
    private string? WithoutTitle(TurnDraft turn, OpenQuestion question, CheckPage page, string text)
    {
        ImmutableArray<string> title = PlainWords.Of(page.Title.Text), said = PlainWords.Of(text);
        string[] rest = [.. said.Where(word => !title.Contains(word))];
        return !text.Contains('?', StringComparison.Ordinal) && rest.Length < said.Length
            && rest.Any(word => Tells(turn, word))
            ? OptionMatcher.Find(string.Join(' ', rest), question.Options, turn.Library.Language)?.Key : null;
    }

    // "It's clean" at the filters is what who has looked already tells as "filter clean".
    private static string? SaidAs(TurnDraft turn, OpenQuestion question, CheckPage page, string text)
    {
        if (!page.Stop.IsEmpty || text.Contains('?', StringComparison.Ordinal)
            || TellingWithoutTitle(turn, page, text) is not { Length: > 0 } said)
            return null;
        AnswerOption[] meant = [.. page.Outcomes.Where(
            outcome => outcome.SaidAs.Any(wording => TellingWithoutTitle(turn, page, wording).SequenceEqual(said)))];
        return meant is [var only] ? Offered(question, only) : null;
    }

    private static string? Offered(OpenQuestion question, AnswerOption outcome) =>
        question.Options.FirstOrDefault(option => option.Key == outcome.Id.Value)?.Key;

    // "Yes, the lamps flicker and get brighter" where an answer is needed: what warns counts in the middle of other
    // words too, unless something is denied or said to be fine.
    private string? Warning(TurnDraft turn, OpenQuestion question, CheckPage page, string text)
    {
        ImmutableArray<string> said = PlainWords.Of(text);
        if (!page.Needed || text.Contains('?', StringComparison.Ordinal) || words.Holds("words-fine", text)
            || said.Any(word => OptionMatcher.Denies(word, turn.Library.Language)))
            return null;
        AnswerOption? sound = SoundOf(turn, page);
        AnswerOption[] warnings =
            [.. page.Outcomes.Where(outcome => outcome.SaidAs.Any(wording => Holds(said, wording)))];
        if (warnings is [var only]) return only != sound ? Offered(question, only) : null;
        return warnings.Length == 0 && TellsWhere(question, page, text) is { } where && where.Key != sound?.Id.Value
            ? where.Key
            : null;
    }

    // "Yes, a bit at the kitchen tap": a yes, and where, in a word with which its wordings begin.
    private Option? TellsWhere(OpenQuestion question, CheckPage page, string text) =>
        OnlyOne(question, "words-plain-yes") is { } yes && words.After("words-plain-yes", text) is { Length: > 0 } rest
        && page.Outcomes.FirstOrDefault(outcome => outcome.Id.Value == yes.Key)?.SaidAs.Select(PlainWords.Telling)
            .Where(said => said.Length > 0).Any(said => PlainWords.Of(rest).Contains(said[0])) == true ? yes : null;

    private static bool Holds(ImmutableArray<string> said, string wording) =>
        $" {string.Join(' ', said)} ".Contains($" {PlainWords.Joined(wording)} ", StringComparison.Ordinal);

    // "In heating" where the mode is asked for.
    private static string? Mode(TurnDraft turn, OpenQuestion question, CheckPage page, string text) => page.TellsMode
        && ModeWords.Find(turn.Library.Phrases, text) is { } mode
        ? question.Options.FirstOrDefault(option => option.Key == mode)?.Key
        : null;

    private static string[] TellingWithoutTitle(TurnDraft turn, CheckPage page, string text)
    {
        ImmutableArray<string> title = PlainWords.Of(page.Title.Text);
        return [.. OptionMatcher.Telling(text, turn.Library.Language)
            .Where(word => !title.Any(known => known == word || known + 's' == word || known == word + 's'))
            .Order(StringComparer.Ordinal)];
    }

    // "No filter" is no "no, full of dust".
    private bool Tells(TurnDraft turn, string word) =>
        word.Any(char.IsLetter) && !OptionMatcher.Denies(word, turn.Library.Language)
        && !words.Means("words-plain-yes", word) && !words.Means("words-plain-no", word);

    // "Looks sound" and "none of it" are what a sound unit shows, where that is one answer. Danger is never waved away
    // so.
    private string? Sound(TurnDraft turn, CheckPage page, string text)
    {
        bool isSound = words.Means("words-sound", text);
        if (!page.Stop.IsEmpty
            || (!isSound && !words.Means("words-none-of-it", text) && !words.Means("words-one-sense", text)))
            return null;
        return SoundOf(turn, page) is { } sound
            && (isSound || OptionMatcher.BeginsDenied(sound.Answer.Text, turn.Library.Language))
            ? sound.Id.Value
            : null;
    }

    // What a unit without a fault shows, where that is one answer.
    private static AnswerOption? SoundOf(TurnDraft turn, CheckPage page)
    {
        ImmutableArray<double> atASoundUnit = turn.Library.Graph.Find(page.Id)!.Row(FaultId.NoneOfThese);
        int place = atASoundUnit.IndexOf(atASoundUnit.Max());
        return atASoundUnit[place] >= LooksSound ? page.Outcomes[place] : null;
    }

    // So far as it is trusted it is the outcome; for the rest it says nothing, as much for any outcome.
    private static ImmutableArray<double> Weights(int place, int count, double trusted) =>
        [.. Enumerable.Range(0, count).Select(index => (index == place ? trusted : 0) + (1 - trusted) / count)];
}
