using DxAssistant.Conversation.Events;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>An owner is asked for signs of danger before anything else.</summary>
internal sealed class DangerFirst : IDecision
{
    /// <summary>Whether a check asks this person for signs of danger.</summary>
    public static bool IsAskedBy(TurnDraft turn, string check) =>
        turn.View.Role.Rank == 0 && CheckQuestion.Page(turn, check) is { Stop.IsEmpty: false };

    public void Decide(TurnDraft turn)
    {
        if (turn.View.Role.Rank > 0 || turn.State.Step is not null) return;
        CheckPage? open = turn.Library.Checks.Values.FirstOrDefault(page => !page.Stop.IsEmpty && IsOpen(turn, page));
        if (open is null) return;
        turn.Happen(new StepChosen(StepKind.Check, open.Id.Value, turn.View.Access.Value));
        CheckQuestion.Ask(turn, open);
    }

    private static bool IsOpen(TurnDraft turn, CheckPage page) =>
        turn.View.AppliesHere(page.Series)
        && turn.View.Role.May(turn.Library.Graph.Find(page.Id)!.Who)
        && turn.View.Results.All(result => result.Check != page.Id.Value);
}
