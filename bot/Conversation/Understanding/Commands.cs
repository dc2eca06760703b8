using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Carries out the commands of the conversation itself.</summary>
internal sealed class Commands(CommandWords words, WhySpeech why)
{
    public CommandWord? Find(string text) => words.Find(text);

    /// <summary>Whether a message is a plain yes or no, which tells nothing where something else is asked.</summary>
    public bool IsYesOrNo(string text) => IsYes(text) || words.Means("words-no", text)
        || words.Means("words-plain-no", text) || words.Means("words-soft-no", text);

    /// <summary>Whether a message is a plain yes.</summary>
    public bool IsYes(string text) => words.Means("words-yes", text) || words.Means("words-plain-yes", text);

    /// <summary>
    /// Whether a message says how a trial run went, whatever else its words are like: "it still leaks".
    /// </summary>
    public bool IsOfTrial(string text) => words.Means("words-leaks-again", text) || words.Means("words-redo", text)
        || words.Means("words-not-cured", text);

    /// <summary>Whether a message says that the case is about another unit.</summary>
    public bool IsWrongUnit(string text) => words.Means(CommandWords.WrongUnit, text);

    /// <summary>
    /// What a message corrects an answer to, and whether it takes the last one back whatever that is; null when it
    /// corrects none.
    /// </summary>
    public (string Anew, bool TakesBack)? Corrected(string text) => words.Corrected(text);

    /// <summary>Whether a word says that something is in order.</summary>
    public bool IsFine(string word) => words.Means("words-fine", word);

    /// <summary>
    /// Whether a message begins like one that tells nothing but not knowing: "no idea what unit it is".
    /// </summary>
    public bool BeginsUnsure(string text) => words.After("words-unsure", text) is not null;

    /// <summary>
    /// What a message asks what to do about: "what should i do if it smells burnt"; null when it asks nothing of the
    /// kind.
    /// </summary>
    public string? WhatIf(string text) => words.After(CommandWords.WhatIf, text);

    /// <summary>
    /// A message that asks what to do about something, in the first of the wordings for it; any other as it is.
    /// </summary>
    public string AskedAlike(string text) =>
        WhatIf(text) is { Length: > 0 } about ? $"{words.First(CommandWords.WhatIf)} {about}" : text;

    /// <summary>A message without its words of anger.</summary>
    public string WithoutAnger(string text) => words.WithoutAnger(text);

    /// <summary>An answer without who gives it and how far they can see; null when neither is said.</summary>
    public string? WithoutTeller(string text) => words.WithoutTeller(text);

    /// <summary>
    /// The same answer without "uh" and "well" before it, who gives it, how far they can see and by which sense.
    /// </summary>
    public IEnumerable<string> Barer(string text)
    {
        if (words.WithoutTeller(text) is { } bare) yield return bare;
        if (words.WithoutSenses(text) is { } sensed) yield return sensed;
        if (words.WithoutFillers(text) is not { } begun) yield break;
        yield return begun;
        if (words.WithoutTeller(begun) is { } both) yield return both;
    }

    /// <summary>
    /// Whether a message tells no more than what was seen or heard of what a question asks for: "yep, I can hear it
    /// running".
    /// </summary>
    public bool TellsWhatIsSensed(string text, OpenQuestion open, LanguagePage? language)
    {
        const int few = 5;
        if (text.Contains('?', StringComparison.Ordinal) || words.WithoutSenses(text) is not { } bare) return false;
        ImmutableArray<string> said = PlainWords.Of(bare);
        ImmutableArray<string> known =
            [.. PlainWords.Of(open.Text), .. open.Options.SelectMany(option => PlainWords.Of(option.Label))];
        return said.Length <= few && said.All(word => known.Contains(word) || words.Means("words-on-the-move", word)
            || words.Means("words-at-rest", word) || IsYesOrNo(word) || OptionMatcher.Denies(word, language));
    }

    /// <summary>
    /// A message without what people begin with while they think; null when it begins with nothing of the kind.
    /// </summary>
    public string? WithoutFillers(string text) => words.WithoutFillers(text);

    /// <summary>The command that a longer message begins with; null when it begins with none.</summary>
    public CommandWord? BegunWith(string text) => words.BegunWith(text);

    /// <summary>A message without what asks for help beside it.</summary>
    public string WithoutAsking(string text) => words.WithoutAsking(text);

    public void Obey(TurnDraft turn, CommandWord word)
    {
        switch (word)
        {
            case CommandWord.Back: TakeBack(turn); break;
            case CommandWord.Why: why.Say(turn); break;
            case CommandWord.Help: Help(turn); break;
            case CommandWord.Again: break;
            case CommandWord.StopHere: Leave(turn); break;
            case CommandWord.StartOver:
                turn.Happen(new StartedOver(AsksWho: true));
                turn.Say(SegmentKind.Notice, "notice-started-over");
                break;
            default: PassOver(turn, word); break;
        }
    }

    private static void TakeBack(TurnDraft turn)
    {
        if (turn.State.Lists is [.., var list])
        {
            turn.Say(SegmentKind.Notice, "notice-taken-back");
            turn.AskAgain(list);
            return;
        }

        if (turn.State.Before is null)
        {
            turn.Say(SegmentKind.Notice, "notice-nothing-to-take-back");
            return;
        }

        (string? access, bool halfWay, bool wasDanger) =
            (turn.State.Access, turn.State.Approach is not null, StopSign.IsSeen(turn));
        turn.Happen(new TookBack());
        turn.Say(SegmentKind.Notice, "notice-taken-back");
        if (wasDanger && !StopSign.IsSeen(turn)) turn.Say(SegmentKind.Caution, "notice-taken-back-danger");
        bool stands = !halfWay && turn.State.Access == access;
        if (!stands) turn.Say(SegmentKind.Caution, "notice-taken-back-access");
        ShowListAgain(turn, stands);
    }

    // A list that was chosen from stands again; a reading is taken again only where the unit stands as it did.
    private static void ShowListAgain(TurnDraft turn, bool stands)
    {
        if (turn.State.Question is { Kind: QuestionKind.Symptom or QuestionKind.Code or QuestionKind.Meaning } list
            && (stands || list.Kind is not QuestionKind.Meaning)) turn.AskAgain(list);
    }

    // Signs of danger are answered first, a repair that was made is tried first.
    private static void Leave(TurnDraft turn)
    {
        if (turn.State.Question is { Kind: QuestionKind.Check } danger && DangerFirst.IsAskedBy(turn, danger.Subject))
            PassOverDanger(turn, danger.Subject, CommandWord.Cannot);
        else if (turn.State is { Unverified: null, ClosedHow: null }) turn.Happen(new LeftToOthers());
        else if (turn.State.ClosedHow is not null && turn.View.Role.Rank == 0)
            turn.Say(SegmentKind.Advice, "closed-book-owner");
        else turn.Say(SegmentKind.Notice, "notice-answer-first");
    }

    private static void Help(TurnDraft turn)
    {
        turn.Say(SegmentKind.Notice, turn.State.Symptoms.IsEmpty ? "help-first" : "help-walk");
        turn.Say(SegmentKind.Notice, "help-commands");
    }

    // Skip, cannot and unsure: what they mean depends on what is open.
    private static void PassOver(TurnDraft turn, CommandWord word)
    {
        switch (turn.State.Question)
        {
            case { Kind: QuestionKind.Check } danger when DangerFirst.IsAskedBy(turn, danger.Subject):
                PassOverDanger(turn, danger.Subject, word);
                break;
            case { Kind: QuestionKind.Check } needed when CheckQuestion.Page(turn,
                needed.Subject) is { Needed: true } page: PassOverNeeded(turn, page, word); break;
            case { Kind: QuestionKind.Check or QuestionKind.Meaning } question: PassOverCheck(turn, question.Subject,
                word); break;
            case { Kind: QuestionKind.Access } when word == CommandWord.Skip:
                turn.Say(SegmentKind.Notice, "notice-cannot-skip-safety");
                break;
            case { Kind: QuestionKind.Access } when word == CommandWord.Unsure:
                turn.Say(SegmentKind.Caution, "notice-unsure-of-safety");
                break;
            case { Kind: QuestionKind.Access } question: RefuseAccess(turn, question.Subject); break;
            case { Kind: QuestionKind.Repair } when word == CommandWord.Unsure:
                turn.Say(SegmentKind.Notice, "unsure-repair");
                break;
            case { Kind: QuestionKind.Repair } question: PassOverRepair(turn, question.Subject); break;
            case { Kind: QuestionKind.LeftOut }: LeftOutAnswer.Leave(turn); break;
            case { Kind: QuestionKind.Symptom } list when word == CommandWord.Unsure: ShowAll(turn, list); break;
            case { Kind: QuestionKind.Symptom or QuestionKind.Code }: turn.Ask(QuestionKind.Complaint, "",
                "ask-complaint-again"); break;
            case { } question when word is CommandWord.Unsure or CommandWord.Cannot:
                turn.Say(SegmentKind.Notice, UnsureAt(question.Kind));
                break;
            default: turn.Say(SegmentKind.Notice, "notice-answer-first"); break;
        }
    }

    // Who cannot tell is shown all that is left to choose from; a list stays, with how to choose.
    private static void ShowAll(TurnDraft turn, OpenQuestion list)
    {
        turn.Say(SegmentKind.Notice, "unsure-symptom");
        if (list.Options.FirstOrDefault(option => Clarifying.IsForAll(option.Key)) is { } all)
            Clarifying.ChooseLeft(turn, all.Key);
    }

    // How to find the answer to a question that cannot be left out.
    private static string UnsureAt(QuestionKind kind) => kind switch
    {
        QuestionKind.Complaint or QuestionKind.Closed => "unsure-complaint",
        QuestionKind.Series => "unsure-series",
        QuestionKind.Role => "unsure-role",
        QuestionKind.Told => "unsure-told",
        QuestionKind.First => "unsure-first",
        QuestionKind.Contradiction => "unsure-contradiction",
        QuestionKind.Proof => "unsure-proof",
        QuestionKind.Doubt => "unsure-doubt",
        QuestionKind.Gone => "unsure-gone",
        QuestionKind.Verify => "unsure-verify",
        QuestionKind.LeftOver => "unsure-left-over",
        _ => "notice-answer-first",
    };

    // Asked once more; who still cannot tell is treated as if there were danger.
    private static void PassOverDanger(TurnDraft turn, string check, CommandWord word)
    {
        if (word != CommandWord.Skip && turn.State.PassedOver.ContainsKey(check))
        {
            StopSign.Unknown(turn);
            return;
        }

        turn.Say(SegmentKind.Notice, "notice-cannot-skip-danger");
        if (word != CommandWord.Skip) turn.Happen(new CheckPassedOver(check, word));
    }

    // Who cannot find out leaves the unit as it is; who is not sure finds out.
    private static void PassOverNeeded(TurnDraft turn, CheckPage page, CommandWord word)
    {
        turn.Say(SegmentKind.Caution, word == CommandWord.Cannot ? "notice-needed-left" : "notice-needed",
            Slot.Of("check", page.Title));
        if (word == CommandWord.Cannot) turn.Happen(new LeftToOthers());
    }

    private static void PassOverCheck(TurnDraft turn, string check, CommandWord reason)
    {
        CheckPage? page = CheckQuestion.Page(turn, check);
        if (page is not null)
            turn.Say(SegmentKind.Understood, "notice-passed-over", Slot.Of("check", page.Title));
        turn.Happen(new CheckPassedOver(check, reason)
        {
            Leaves = reason == CommandWord.Unsure && page is not null ? StateLeft.By(turn, page) : null,
        });
        if (turn.State.PassedOver.Count % turn.Library.Settings.LeftOut == 0)
            turn.Say(SegmentKind.Notice, "notice-may-stop-here");
    }

    // The start and the state for the trial run cannot be refused: without them no case ends.
    private static void RefuseAccess(TurnDraft turn, string access)
    {
        var id = new AccessId(access);
        if (id == turn.Library.Graph.Access.Start || id == turn.Library.Graph.Access.Verify
            || !turn.Library.Access.TryGetValue(id, out var page))
        {
            turn.Say(SegmentKind.Notice, "notice-answer-first");
            return;
        }

        bool halfWay = turn.State.Approach is not null;
        turn.Happen(new AccessRefused(access));
        turn.Say(SegmentKind.Understood, "notice-access-refused", Slot.Of("access", page.Title));
        if (halfWay) turn.Say(SegmentKind.Caution, "notice-taken-back-access");
    }

    private static void PassOverRepair(TurnDraft turn, string repair)
    {
        if (turn.Library.Repairs.TryGetValue(new RepairId(repair), out var page))
            turn.Say(SegmentKind.Understood, "notice-passed-over", Slot.Of("check", page.Title));
        turn.Happen(new RepairPassedOver(repair));
    }
}
