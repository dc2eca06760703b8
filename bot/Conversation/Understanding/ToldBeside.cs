using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Told;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Who is at the unit and in which mode it runs, told beside something else.</summary>
internal static class ToldBeside
{
    /// <summary>The mode a trouble shows in, said beside it.</summary>
    public static void Mode(TurnDraft turn, WholeMessage told)
    {
        if (told.Items.FirstOrDefault(item => item.Thing is ToldThing.Mode)?.Thing is not ToldThing.Mode mode
            || mode.Running == turn.State.Mode
            || ToldSpeech.Of(turn, turn.View.Series, mode) is not { } said || !TellsTrouble(turn)) return;
        turn.Happen(new ModeStated(mode.Running));
        turn.Note("understood-mode", ToldSpeech.List("mode", [said]));
    }

    /// <summary>Who is at the unit, said beside a trouble.</summary>
    public static void Person(TurnDraft turn, WholeMessage told)
    {
        if (turn.State.Role is not null || PersonIn(told) is not { } person || !TellsTrouble(turn)) return;
        RolePage page = turn.Library.Roles.First(known => known.Role.Id == person.Role);
        turn.Happen(new RoleStated(page.Role.Id));
        turn.Note("understood-role", Slot.Of("role", page.Name));
    }

    /// <summary>
    /// An owner may say so beside what is refused; a technician is taken at their word only where nothing unsafe is
    /// asked for.
    /// </summary>
    public static void Owner(TurnDraft turn, WholeMessage told)
    {
        if (turn.State.Role is null && PersonIn(told) is { } person
            && turn.Library.Roles.First(page => page.Role.Id == person.Role) is { Role.Rank: 0 } owner)
            RoleAnswer.Take(turn, owner);
    }

    /// <summary>Who it is, said where something else is asked: taken, and the question asked again.</summary>
    public static void Role(TurnDraft turn, string role)
    {
        RoleAnswer.Take(turn, turn.Library.Roles.First(page => page.Role.Id == role));
        if (turn.State.Question is { Kind: not QuestionKind.Complaint } open) turn.AskAgain(open);
    }

    private static ToldThing.AtUnit? PersonIn(WholeMessage told) =>
        told.Items.Select(item => item.Thing).OfType<ToldThing.AtUnit>().FirstOrDefault();

    private static bool TellsTrouble(TurnDraft turn) =>
        turn.Happened<SymptomReported>() || turn.Happened<CodeReported>() || turn.Happened<WholeTold>()
        || turn.Question is { Kind: QuestionKind.Symptom or QuestionKind.Code };
}
