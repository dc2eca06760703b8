using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Answers;

internal sealed class RepairAnswer(CommandWords words) : Answer
{
    /// <summary>The key of "repair done".</summary>
    public const string Done = "done";

    public override QuestionKind Kind => QuestionKind.Repair;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (key != Done || !turn.Library.Repairs.TryGetValue(new RepairId(question.Subject), out RepairPage? page))
            return false;
        turn.Happen(page.LeftToOthers ? new LeftToOthers() : new RepairDone(question.Subject));
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text)
    {
        if (words.Means("words-done", text) || words.Means("words-repaired", text)) return Choose(turn, question, Done);
        if (!TellsCure(text)) return base.Hear(turn, question, text);
        Misfit.Say(turn);
        return true;
    }

    // "It is cooling now" may be told before anything was repaired.
    private bool TellsCure(string text) => words.Means("words-cured", text) || words.Means("words-cools-now", text)
        || words.Means("words-heats-now", text);
}
