using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Speaking;

/// <summary>Says why the open question is asked.</summary>
internal sealed class WhySpeech(StepChooser chooser)
{
    private readonly WhyStepSpeech steps = new(chooser);

    public void Say(TurnDraft turn)
    {
        switch (turn.State.Question?.Kind)
        {
            case QuestionKind.Series or QuestionKind.Code: turn.Say(SegmentKind.Why, "why-series"); break;
            case QuestionKind.Role: turn.Say(SegmentKind.Why, "why-role"); break;
            case QuestionKind.Told: turn.Say(SegmentKind.Why, "why-told"); break;
            case QuestionKind.Access: SayAccess(turn); break;
            case QuestionKind.Check or QuestionKind.Meaning or QuestionKind.Repair
                or QuestionKind.Proof: steps.Say(turn); break;
            case QuestionKind.Contradiction: Contradiction.SayWhy(turn); break;
            case QuestionKind.Doubt: turn.Say(SegmentKind.Why, "why-doubt"); break;
            case QuestionKind.LeftOut: turn.Say(SegmentKind.Why, "why-left-out"); break;
            case QuestionKind.Verify: turn.Say(SegmentKind.Why, "why-trial"); break;
            case QuestionKind.Gone: turn.Say(SegmentKind.Why, "why-gone"); break;
            case QuestionKind.LeftOver: turn.Say(SegmentKind.Why, "why-left-over"); break;
            case QuestionKind.Closed: SayClosed(turn); break;
            default: turn.Say(SegmentKind.Why, "why-first"); break;
        }
    }

    private void SayAccess(TurnDraft turn)
    {
        if (turn.State.Step is { } step)
            turn.Say(SegmentKind.Why, "why-access", WhyStepSpeech.Named(turn, "step", step.Id));
        else turn.Say(SegmentKind.Why, "why-trial");
        steps.Say(turn);
    }

    // Whoever asks at the end asks how it came to that.
    private static void SayClosed(TurnDraft turn)
    {
        turn.Say(SegmentKind.Why, "why-closed");
        WhyFaultSpeech.SayLikeliest(turn);
    }
}
