using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Takes whether a check that was left out is done after all before the walk ends.</summary>
internal sealed class LeftOutAnswer(CommandWords words) : Answer
{
    /// <summary>The key of "no, end here".</summary>
    public const string End = "end";

    public override QuestionKind Kind => QuestionKind.LeftOut;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (key != End) return question.Subject.Split(' ').Contains(key) && Take(turn, new CheckId(key));
        Leave(turn);
        return true;
    }

    /// <summary>Nothing that was left out is done: none of it is named again.</summary>
    public static void Leave(TurnDraft turn) => turn.Happen(new ProofGapTold([.. turn.State.PassedOver.Keys]));

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text) =>
        words.Means("words-no", text) ? Choose(turn, question, End)
        : words.Means("words-yes", text) && question.Options is [var only, _] ? Choose(turn, question, only.Key)
        : base.Hear(turn, question, text);

    // The others may be named again: they were not refused.
    private static bool Take(TurnDraft turn, CheckId check)
    {
        if (!turn.Library.Checks.ContainsKey(check) || ProofGap.PlaceOf(turn, check) is not { } place) return false;
        turn.Happen(new ProofGapTold([check.Value]));
        turn.Happen(new CheckReopened(check.Value));
        turn.Happen(new StepChosen(StepKind.Check, check.Value, place.Value));
        return true;
    }
}
