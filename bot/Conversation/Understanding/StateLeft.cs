using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>In which access state a check that is answered leaves the unit.</summary>
internal static class StateLeft
{
    /// <summary>
    /// The state that its page names; null when none is named, or when nobody was at the check: what is told of earlier
    /// moves nothing now.
    /// </summary>
    public static string? By(TurnDraft turn, CheckPage page) =>
        turn.State is { Approach: null, Step: { Kind: StepKind.Check } step } && step.Id == page.Id.Value
            && step.Access == turn.View.Access.Value
            ? page.Leaves?.Value
            : null;
}
