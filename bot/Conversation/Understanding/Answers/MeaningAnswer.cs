using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Takes which of several meanings a reading had; typed words are taken as the reading anew.</summary>
internal sealed class MeaningAnswer(CommandWords words) : Answer
{
    public override QuestionKind Kind => QuestionKind.Meaning;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (CheckQuestion.Page(turn, question.Subject) is not { } page) return false;
        if (key == MeaningKey.None) CheckQuestion.AskPlainly(turn, page);
        else if (question.Options.Any(option => option.Key == key))
            ReadingIntake.Take(turn, page, MeaningKey.Read(key));
        else return false;
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text) =>
        question.Options is [var only, _] && words.Means("words-yes", text) ? Choose(turn, question, only.Key)
        // A bare number is that of a meaning, also when the list is no longer in sight: no reading comes of it.
        : NumberAlone.PlaceOf(text) is { } place && place < question.Options.Length
        ? Choose(turn, question, question.Options[place].Key)
        : OptionMatcher.Exactly(text, question.Options) is { } option
            ? Choose(turn, question, option.Key)
            : CheckQuestion.Page(turn, question.Subject) is { } page && ReadingIntake.Hear(turn, page, text);
}
