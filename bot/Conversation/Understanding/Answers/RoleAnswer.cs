using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

internal sealed class RoleAnswer(WholeReader whole, RoleWords words) : Answer
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

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text)
    {
        if ((whole.RoleIn(text) ?? words.Find(text)) is { } role) return Choose(turn, question, role);
        if (base.Hear(turn, question, text)) return true;
        if (!words.SaysSomebody(text)) return false;
        turn.Say(SegmentKind.Notice, "notice-which-person");
        return true;
    }

    /// <summary>Whether words answer who is there.</summary>
    public bool Knows(string text) => words.Find(text) is not null || words.SaysSomebody(text);
}
