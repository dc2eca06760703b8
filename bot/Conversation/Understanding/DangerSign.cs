using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>A sign of danger that a message tells of.</summary>
/// <param name="Check">The check that asks for such signs.</param>
internal sealed record DangerSign(CheckPage Check, OutcomeId Outcome)
{
    /// <summary>What it tells of.</summary>
    public DangerKind Kind => Check.DangerOf(Outcome);

    /// <summary>The phrases that say what to do at once.</summary>
    /// <remarks>
    /// Where gas may be in the air, the switch that stops a fire would start one. Only where somebody may have got a
    /// shock is a doctor spoken of.
    /// </remarks>
    public ImmutableArray<string> AtOnce => Kind switch
    {
        DangerKind.Gas => ["closed-stop-gas"],
        DangerKind.Water => ["closed-stop-wet"],
        DangerKind.Shock => ["closed-stop-shock", "danger-shock"],
        _ => ["closed-stop-safe"],
    };

    public AnswerOption Answer => Check.Outcomes.First(option => option.Id == Outcome);
}
