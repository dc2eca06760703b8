using System.Collections.Frozen;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Knowledge.Readings;
using DxAssistant.Knowledge.Search;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Takes a message, in this order: commands of the conversation, unsafe requests, answers to the open question, codes,
/// complaints in plain words; and says so when it is none of these.
/// </summary>
internal sealed class Listener(
    Commands commands, FrozenDictionary<QuestionKind, Answer> answers, Matcher matcher)
{
    /// <summary>The longest message that is read, in characters.</summary>
    public const int Longest = 4_000;

    public void Listen(TurnDraft turn, MessageBody body)
    {
        switch (body)
        {
            case MessageBody.Opening: turn.Say(SegmentKind.Notice, "opening"); break;
            case MessageBody.Command command: commands.Obey(turn, command.Word); break;
            case MessageBody.Words words: Hear(turn, words); break;
            case MessageBody.Choice choice: Choose(turn, choice); break;
            case MessageBody.Readings readings: Fill(turn, readings); break;
        }
    }

    /// <summary>Whether words ask for the whole step to be said again.</summary>
    public bool IsAgain(string text) => commands.Find(text) == CommandWord.Again;

    private void Hear(TurnDraft turn, MessageBody.Words words)
    {
        string text = words.Text;
        if (IsStale(turn, words.Question)) Open(turn, words.Question);
        else if (text.Length > Longest) turn.Say(SegmentKind.Notice, "notice-too-long", Slot.Figure("limit", Longest));
        else if (PlainWords.IsEmpty(text)) turn.Say(SegmentKind.Notice, "notice-empty");
        else if (commands.Find(text) is { } word) commands.Obey(turn, word);
        else Understand(turn, text, matcher.Match(text, turn.State.Series));
    }

    private void Understand(TurnDraft turn, string text, MatchResult match)
    {
        if (!Refusals.Refuse(turn, match) && !Answers(turn, text)) Tell(turn, text, match);
    }

    // What is told unasked: the unit, then a code or a complaint, perhaps all in one message.
    private static void Tell(TurnDraft turn, string text, MatchResult match)
    {
        if (turn.View.Series is null && SeriesNames.Find(turn.Library, text) is { } named) SeriesNames.Choose(turn, named);
        if (!Codes.Hear(turn, text)) Complaints.Hear(turn, text, match);
        if (ReadingParser.Parse(text, ReadingContext.None) is ReadingResult.Readings { List: var early })
            turn.Note("notice-reading-early", Slot.Said("readings", string.Join(", ", early.Select(ShownValue.Of))));
    }

    // Words said at another question must not confirm a step or a repair that was not in sight.
    private static bool IsStale(TurnDraft turn, string? meant) =>
        meant is not null && turn.State.Question is { } open && meant != open.Id
        && open.Kind is not (QuestionKind.Complaint or QuestionKind.Series or QuestionKind.Role or QuestionKind.Closed);

    private bool Answers(TurnDraft turn, string text) =>
        turn.State.Question is { } question
        && answers.TryGetValue(question.Kind, out Answer? answer)
        && answer.Hear(turn, question, text);

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
