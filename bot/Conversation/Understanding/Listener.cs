using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Told;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Readings;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Takes a message, in this order: commands of the conversation, people in need of help, corrections, unsafe requests,
/// signs of danger, questions back, a whole message that tells more than the open question asks, answers to the open
/// question, codes, complaints in plain words; and says so when it is none of these.
/// </summary>
internal sealed class Listener(
    Commands commands, FrozenDictionary<QuestionKind, Answer> answers, IMatcher matcher, WholeReader whole,
    Danger danger,
    FaultQuestions faults, SideQuestions side, FirstHelp help, ComplaintPieces pieces, RefusedMessages refusals,
    HarmlessQuestions harmless,
    RoleAnswer person, GoneTrouble gone, Corrections corrections)
{
    /// <summary>The longest message that is read, in characters.</summary>
    public const int Longest = 4_000;

    /// <summary>Makes what understanding typed words needs, so that the first of them need not wait.</summary>
    public void GetReady()
    {
        whole.GetReady();
        matcher.Match("");
    }

    public void Listen(TurnDraft turn, MessageBody body)
    {
        switch (body)
        {
            case MessageBody.Opening: turn.Say(SegmentKind.Notice, "opening"); break;
            case MessageBody.Earlier earlier: EarlierHearing.Hear(turn, earlier); break;
            case MessageBody.Command command: commands.Obey(turn, command.Word); break;
            case MessageBody.Words words: Hear(turn, words); break;
            case MessageBody.Choice choice: Choose(turn, choice); break;
            case MessageBody.Readings readings: Fill(turn, readings); break;
        }
    }

    /// <summary>Whether words ask for the whole step to be said again.</summary>
    public bool IsAgain(string text) => commands.Find(text) == CommandWord.Again;

    /// <summary>Whether words are a plain yes.</summary>
    public bool IsYes(string text) => commands.IsYes(text);

    /// <summary>Whether words are a plain no.</summary>
    public bool IsNo(string text) => !commands.IsYes(text) && commands.IsYesOrNo(text);

    /// <summary>The symptom that words tell beyond doubt; null when they tell none or several.</summary>
    public SymptomId? SymptomIn(string text) =>
        Offering.CertainSymptom(matcher.Match(text)) is { } found ? new SymptomId(found) : null;

    /// <summary>The page that refuses what words ask for; null when they ask for nothing unsafe.</summary>
    public string? RefusedIn(string text) =>
        matcher.Match(text) is { Decision: MatchDecision.Refuse, RefusalId: { } page } ? page : null;

    private void Hear(TurnDraft turn, MessageBody.Words words)
    {
        string text = words.Text;
        if (IsStale(turn, words.Question)) Open(turn, words.Question);
        else if (text.Length > Longest) turn.Say(SegmentKind.Notice, "notice-too-long", Slot.Figure("limit", Longest));
        else if (PlainWords.IsEmpty(text)) turn.Say(SegmentKind.Notice, "notice-empty");
        else if (side.HearNext(turn, text) || side.HearSheet(turn, text)) return;
        else if ((commands.Find(text) ?? FoundBehindFillers(turn, text)) is { } word) commands.Obey(turn, word);
        else if (help.Hear(turn, text) is not { Length: > 0 } rest) return;
        else if (corrections.Hear(turn, rest, out string heard) || faults.Hear(turn, heard)) return;
        else UnderstandAlike(turn, commands.AskedAlike(heard));
    }

    private void UnderstandAlike(TurnDraft turn, string text) =>
        Understand(turn, text,
            matcher.Match(SeriesNames.Without(turn.Library, NoCodes.WithoutTerminals(text)), turn.State.Series));

    // "Well, how would I know": but where "so" may begin an answer, the answer comes first.
    private CommandWord? FoundBehindFillers(TurnDraft turn, string text) =>
        turn.State.Question is { Kind: QuestionKind.Check } open
        && OptionMatcher.Find(text, open.Options, turn.Library.Language) is null
        && commands.WithoutFillers(text) is { } bare ? commands.Find(bare) : null;

    private void Understand(TurnDraft turn, string text, MatchResult match)
    {
        if (commands.WhatIf(text) is { } about && danger.Advise(turn, about)) return;
        if (!TellsDanger(text))
        {
            if (turn.State.Question is { Kind: QuestionKind.Role } && person.Knows(text) && Answers(turn, text)) return;
            if (gone.Hear(turn, text)) return;
            if (gone.TellsNone(turn, text, match))
            {
                turn.Say(SegmentKind.Notice, "notice-no-trouble");
                return;
            }
        }

        if (side.HearIsItDangerous(turn, text)
            || (!TellsDanger(text) && !IsAnAnswer(turn, text) && harmless.Hear(turn, text)))
            return;
        bool isPerson = whole.RoleIn(text) is not null
            && (IsBeforeTheWalk(turn) || turn.State.Question is { Kind: QuestionKind.Role });
        bool isSensed = turn.State.Question is { Kind: QuestionKind.Check } open
            && commands.TellsWhatIsSensed(text, open, turn.Library.Language);
        if (match.IsByLikeness && (isPerson || isSensed || IsBriefAtStep(turn, text))) match = match.Unrefused();
        else if (isPerson || isSensed) match = match with { Decision = MatchDecision.None, RefusalId = null };
        bool refused = match.Decision is MatchDecision.Refuse && !IsAnAnswer(turn, text)
            && !danger.Outranks(text, match);
        if (refused) refusals.Refuse(turn, text, match);
        if (danger.Hear(turn, text)) return;
        if (!refused && side.Hear(turn, text)) return;
        WholeMessage told = whole.Read(turn, text);
        if (refused)
        {
            if (match.IsByLikeness && TellsMoreThanAsked(turn, text, told))
                Telling.Hear(turn, told, text, matcher, whole.MannerIn(text));
            else refusals.HearBesides(turn, text, match);
            return;
        }

        if (LoneFinding.IsComplaint(turn, told)) told = told with { Items = [] };
        if (told.LoneRole is { } role && IsBeforeTheWalk(turn)) ToldBeside.Role(turn, role);
        else if (TellsMoreThanAsked(turn, text, told)) Telling.Hear(turn, told, text, matcher, whole.MannerIn(text));
        else if (!Answers(turn, text)) Tell(turn, text, match, told);
    }

    // A few words of the question and its answers are an answer that does not fit, and no request: "plug ok", "it has
    // not tripped"; nor are a few words where signs of danger are asked for: "just a little hiss".
    private bool IsBriefAtStep(TurnDraft turn, string told)
    {
        string text = commands.WithoutTeller(told) ?? told;
        const int few = 6;
        if (turn.State.Question is not { Kind: QuestionKind.Check } open
            || text.Contains('?', StringComparison.Ordinal))
            return false;
        if (IsNeeded(turn)) return true;
        if (PlainWords.Of(text).Length > few) return false;
        if (DangerFirst.IsAskedBy(turn, open.Subject)) return true;
        ImmutableArray<string> known =
            [.. PlainWords.Of(open.Text), .. open.Options.SelectMany(option => PlainWords.Of(option.Label))];
        return PlainWords.Telling(text).All(word => known.Contains(word) || commands.IsFine(word));
    }

    private static bool IsBeforeTheWalk(TurnDraft turn) => turn.State.Unconfirmed.IsEmpty
        && turn.State.Question is null
            or { Kind: QuestionKind.Complaint or QuestionKind.Symptom or QuestionKind.Code or QuestionKind.Series
                or QuestionKind.First };

    private static bool IsNeeded(TurnDraft turn) => turn.State.Question is { Kind: QuestionKind.Check } open
        && CheckQuestion.Page(turn, open.Subject) is { Needed: true };

    // An answer as it stands on the screen is no request, whatever its words are like; nor is one in a few of its words
    // ("it stands still"), nor a sign of danger where one is asked for.
    private bool IsAnAnswer(TurnDraft turn, string text)
    {
        const int few = 4;
        if (turn.State.Question is not { } open) return false;
        bool mayTellMore = TellsDanger(text) && DangerFirst.IsAskedBy(turn, open.Subject);
        return OptionMatcher.Exactly(text, open.Options) is not null
            || (open.Kind is QuestionKind.Verify && commands.IsOfTrial(text))
            || (open.Kind is QuestionKind.Check && commands.TellsWhatIsSensed(text, open, turn.Library.Language))
            || (open.Kind is QuestionKind.Check && (mayTellMore || PlainWords.Of(text).Length <= few)
                && OptionMatcher.Find(text, open.Options, turn.Library.Language) is not null);
    }

    /// <summary>Whether words tell of danger, or of somebody in need of help.</summary>
    public bool IsUrgent(string text) => TellsDanger(text) || help.IsTold(text);

    /// <summary>Whether words tell of danger.</summary>
    public bool TellsDanger(string text) => danger.IsTold(text);

    // Where a step towards a safe state, a repair or a sign of danger is asked, the answer comes first: nothing else
    // may be heard into it.
    private static bool TellsMoreThanAsked(TurnDraft turn, string text, WholeMessage told) => told.NeedsConfirming
        && turn.State.Question switch
        {
            null or { Kind: QuestionKind.Complaint or QuestionKind.Series or QuestionKind.Symptom or QuestionKind.Closed
                or QuestionKind.LeftOver or QuestionKind.Code or QuestionKind.Told or QuestionKind.First } => true,
            { Kind: QuestionKind.Role } => told.Items.Any(item => item.Thing is not ToldThing.AtUnit),
            { Kind: QuestionKind.Check } check => !DangerFirst.IsAskedBy(turn, check.Subject)
                && told.GoesBeyond(check.Subject) && OptionMatcher.Exactly(text, check.Options) is null,
            _ => false,
        };

    // What is told unasked: the unit, then a code or a complaint, perhaps all in one message.
    private void Tell(TurnDraft turn, string text, MatchResult match, WholeMessage told)
    {
        // "The lamps flicker" tells of no other machine and no other trouble before it is known.
        if (IsNeeded(turn))
        {
            Misfit.Say(turn);
            return;
        }

        if (turn.State.Question is { Kind: QuestionKind.Series or QuestionKind.Role } && told.Items.IsEmpty
            && commands.BeginsUnsure(text))
        {
            commands.Obey(turn, CommandWord.Unsure);
            return;
        }

        if (turn.State.Question is { Kind: not (QuestionKind.Complaint or QuestionKind.Closed) } open
            && (commands.IsYesOrNo(commands.WithoutFillers(text) ?? text) || IsDenial(turn, text)))
        {
            bool isDanger = open.Kind == QuestionKind.Check && DangerFirst.IsAskedBy(turn, open.Subject)
                && commands.IsYes(commands.WithoutFillers(text) ?? text);
            if (isDanger) turn.Say(SegmentKind.Notice, "notice-which-danger");
            else Misfit.Say(turn);
            return;
        }

        if (HearsOfSigns(turn, told)) return;
        if (turn.State.Question is { Kind: QuestionKind.Check } && told.Items.IsEmpty
            && Offering.CertainSymptom(match) is null && commands.BegunWith(text) is { } begun)
        {
            commands.Obey(turn, begun);
            return;
        }

        if (told.NeedsConfirming)
        {
            Telling.Hear(turn, told, text, matcher, whole.MannerIn(text));
            return;
        }

        if (turn.View.Series is null && SeriesNames.Find(turn.Library, text) is { } named)
        {
            SeriesNames.Choose(turn, named);
            if (turn.State.Question is null or { Kind: QuestionKind.Complaint }
                && SeriesNames.IsAll(turn.Library, text))
                return;
        }
        else if (turn.View.Series is { } walked
            && (commands.IsWrongUnit(text) || told is { Items: [{ Thing: ToldThing.Unit }], Rest.IsEmpty: true }))
        {
            turn.Say(SegmentKind.Notice, "notice-other-unit", Slot.Of("series", walked.Title));
            return;
        }

        // Readings alone are no words for a trouble.
        if (told.TellsOnlyReadings && turn.State is { Symptoms.IsEmpty: true, Code: null })
        {
            if (!EarlyReadings.Note(turn, text)) Telling.NoteUnclear(turn, told);
            return;
        }

        if (!Codes.Hear(turn, text) && !(match.TellsNothing && Codes.Guess(turn, text))
            && !pieces.Hear(turn, text, match))
            Complain(turn, text, match);
        ToldBeside.Mode(turn, told);
        ToldBeside.Person(turn, told);
        // What is the whole message was heard as a complaint already.
        if (!told.Unclear.IsEmpty && !(told.Unclear is [var only] && only.Length == text.Trim().Length))
            Telling.NoteUnclear(turn, told);
        else EarlyReadings.Note(turn, text);
    }

    // One of the signs of danger where they are asked for: which it is has to be named; denying one says nothing of the
    // others.
    private static bool HearsOfSigns(TurnDraft turn, WholeMessage told)
    {
        if (turn.State.Question is not { Kind: QuestionKind.Check } open || !DangerFirst.IsAskedBy(turn, open.Subject)
            || told.Items.Select(item => item.Thing).OfType<ToldThing.Outcome>()
                .FirstOrDefault(outcome => outcome.Check == open.Subject) is not { } seen)
            return false;
        bool isSign = turn.Library.Checks[new CheckId(seen.Check)].Stop.Contains(new OutcomeId(seen.Seen));
        turn.Say(SegmentKind.Notice, isSign ? "notice-which-danger" : "notice-cannot-skip-danger");
        return true;
    }

    // "No nothing" denies, and tells no more.
    private static bool IsDenial(TurnDraft turn, string text) =>
        PlainWords.Of(text) is { IsEmpty: false } said
            && said.All(word => OptionMatcher.Denies(word, turn.Library.Language));

    // Anger is answered, and what it is about is heard all the same; "what do i do" behind a complaint asks for nothing
    // else.
    private void Complain(TurnDraft turn, string text, MatchResult match)
    {
        string bare = match is { Decision: MatchDecision.None, RefusalId: not null }
            ? commands.WithoutAsking(text)
            : "";
        if (bare.Length > 0 && bare.Length < PlainWords.Joined(text).Length
            && matcher.Match(bare, turn.State.Series) is { Symptoms.IsEmpty: false } told)
        {
            Complaints.Hear(turn, text, told, whole.MannerIn(text)(text));
            return;
        }

        string calm = match is { Decision: MatchDecision.None, RefusalId: not null }
            ? commands.WithoutAnger(text)
            : text;
        MatchResult heard = calm.Length < text.Trim().Length ? matcher.Match(calm, turn.State.Series) : match;
        if (match.RefusalId is { } page && heard != match && !heard.Symptoms.IsEmpty && turn.State.Symptoms.IsEmpty)
            turn.Quote(SegmentKind.Notice, turn.Library.Refusals[page].Answer);
        else heard = match;
        Complaints.Hear(turn, text, heard, whole.MannerIn(text)(text));
    }

    // Words said at another question must not confirm a step or a repair that was not in sight.
    private static bool IsStale(TurnDraft turn, string? meant) =>
        meant is not null && turn.State.Question is { } open && meant != open.Id
        && open.Kind is not (QuestionKind.Complaint or QuestionKind.Series or QuestionKind.Role or QuestionKind.Closed);

    private bool Answers(TurnDraft turn, string text) =>
        turn.State.Question is { } question
        && answers.TryGetValue(question.Kind, out Answer? answer)
        && (answer.Hear(turn, question, text)
            || (!TellsDanger(text) && commands.Barer(text).Any(bare => answer.Hear(turn, question, bare))));

    private void Choose(TurnDraft turn, MessageBody.Choice choice)
    {
        if (Open(turn, choice.Question) is not { } question) return;
        if (!answers.TryGetValue(question.Kind, out Answer? answer) || !answer.Choose(turn, question, choice.Key))
            turn.Say(SegmentKind.Notice, "notice-choose");
    }

    private void Fill(TurnDraft turn, MessageBody.Readings readings)
    {
        if (Open(turn, readings.Question) is not { } question) return;
        if (!answers.TryGetValue(question.Kind, out Answer? answer) || !answer.Fill(turn, question, readings.Fields))
            turn.Say(SegmentKind.Notice, "notice-choose");
    }

    // The open question, unless the answer is meant for an older one.
    private static OpenQuestion? Open(TurnDraft turn, string? meant)
    {
        if (turn.State.Question is { } question && (meant is null || meant == question.Id)) return question;
        turn.Say(SegmentKind.Notice, "notice-stale");
        turn.Stale = true;
        return null;
    }
}
