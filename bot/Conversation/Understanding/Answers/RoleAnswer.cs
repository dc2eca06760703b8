using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

internal sealed class RoleAnswer(WholeReader whole) : Answer
{
    public override QuestionKind Kind => QuestionKind.Role;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        RolePage? page = turn.Library.Roles.FirstOrDefault(page => page.Role.Id == key);
        if (page is null) return false;
        Take(turn, page);
        return true;
    }

    /// <summary>Enters who is at the unit.</summary>
    public static void Take(TurnDraft turn, RolePage page)
    {
        turn.Happen(new RoleStated(page.Role.Id));
        turn.Say(SegmentKind.Understood, "understood-role", Slot.Of("role", page.Name));
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text) =>
        whole.RoleIn(text) is { } role ? Choose(turn, question, role) : base.Hear(turn, question, text);
}
