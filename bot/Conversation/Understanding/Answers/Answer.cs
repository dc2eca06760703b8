using System.Collections.Immutable;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Takes the answers to one kind of question.</summary>
internal abstract class Answer
{
    public abstract QuestionKind Kind { get; }

    /// <summary>Takes a tapped option.</summary>
    /// <returns>False when the question offers no such option.</returns>
    public abstract bool Choose(TurnDraft turn, OpenQuestion question, string key);

    /// <summary>Takes typed words, when they answer the question beyond doubt.</summary>
    public virtual bool Hear(TurnDraft turn, OpenQuestion question, string text) =>
        OptionMatcher.Find(text, question.Options, turn.Library.Language) is { } option
            && Choose(turn, question, option.Key);

    /// <summary>Takes a filled-in form.</summary>
    public virtual bool Fill(TurnDraft turn, OpenQuestion question, ImmutableArray<FilledField> fields) => false;
}
