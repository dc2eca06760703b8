using System.Globalization;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Understanding.Whole;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Takes whether a whole message was understood rightly, all of it or thing by thing.</summary>
internal sealed class ToldAnswer(CommandWords words) : Answer
{
    /// <summary>The key of "that is right".</summary>
    public const string Yes = "yes";

    /// <summary>The key of "nothing of it".</summary>
    public const string Nothing = "nothing";

    public override QuestionKind Kind => QuestionKind.Told;

    /// <summary>The key that takes one thing back, or in again.</summary>
    public static string Key(int place) => place.ToString(CultureInfo.InvariantCulture);

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (!question.Options.Any(option => option.Key == key)) return false;
        if (key == Yes) ToldSettling.Settle(turn);
        else if (key == Nothing)
        {
            turn.Happen(new ToldSettled());
            turn.Say(SegmentKind.Notice, "notice-none-of-it");
        }
        else turn.Happen(new ToldSwitched(int.Parse(key, CultureInfo.InvariantCulture)));
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text)
    {
        if (words.Means("words-yes", text) || words.Means("words-done", text)) return Choose(turn, question, Yes);
        if (words.Means("words-no", text))
        {
            turn.Say(SegmentKind.Notice, "notice-tap-what-is-wrong");
            return true;
        }

        return OptionMatcher.Exactly(text, question.Options) is { } option && Choose(turn, question, option.Key);
    }
}
