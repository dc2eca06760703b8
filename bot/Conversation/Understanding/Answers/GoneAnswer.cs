using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Takes whether the trouble is gone.</summary>
internal sealed class GoneAnswer(CommandWords words) : Answer
{
    /// <summary>The key of "it is gone".</summary>
    public const string Gone = "gone";

    /// <summary>The key of "it is still there".</summary>
    public const string Stays = "stays";

    public override QuestionKind Kind => QuestionKind.Gone;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (key is not (Gone or Stays)) return false;
        turn.Happen(new TroubleDenied(key == Gone));
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text) =>
        words.Means("words-yes", text) || words.Means("words-gone", text) ? Choose(turn, question, Gone)
        : words.Means("words-no", text) ? Choose(turn, question, Stays)
        : base.Hear(turn, question, text);
}
