using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Understanding.Answers;

internal sealed class CodeAnswer(CommandWords words) : OfferAnswer(words)
{
    public override QuestionKind Kind => QuestionKind.Code;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (key == SymptomAnswer.None)
        {
            CodeLookUp.GiveUp(turn);
            return true;
        }

        if (turn.View.Series is not { } series || CodeLookUp.ByKey(series, key) is not { } code) return false;
        CodeLookUp.Report(turn, code);
        return true;
    }
}
