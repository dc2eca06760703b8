using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Deciding;

/// <summary>What may be asked depends on who is at the unit.</summary>
internal sealed class MissingRole : IDecision
{
    public void Decide(TurnDraft turn)
    {
        if (turn.State.Role is not null) return;
        turn.Ask(QuestionKind.Role, "", "ask-role",
            [.. turn.Library.Roles.Select(page => new Option(page.Role.Id, page.Name.Text))]);
    }
}
