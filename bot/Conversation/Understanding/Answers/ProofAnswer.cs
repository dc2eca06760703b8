using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Takes whether a part is proved after all before it is changed.</summary>
internal sealed class ProofAnswer : Answer
{
    /// <summary>The key of "change it without proof".</summary>
    public const string Without = "without";

    /// <summary>The key of "leave it to somebody else".</summary>
    public const string Leave = "leave";

    public override QuestionKind Kind => QuestionKind.Proof;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        string[] checks = question.Subject.Split(' ');
        if (key == Leave) turn.Happen(new LeftToOthers());
        else if (key == Without)
        {
            turn.Happen(new ProofGapTold([.. checks]));
            turn.Say(SegmentKind.Understood, "understood-unproven");
        }
        else return checks.Contains(key) && Take(turn, checks, new CheckId(key));
        return true;
    }

    // Done next, whatever the plan would rather do: it was asked for.
    private static bool Take(TurnDraft turn, string[] checks, CheckId check)
    {
        if (!turn.Library.Checks.ContainsKey(check) || ProofGap.PlaceOf(turn, check) is not { } place) return false;
        turn.Happen(new ProofGapTold([.. checks]));
        turn.Happen(new CheckReopened(check.Value));
        turn.Happen(new StepChosen(StepKind.Check, check.Value, place.Value));
        return true;
    }
}
