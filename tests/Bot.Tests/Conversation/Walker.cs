using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Holds one conversation and its log.</summary>
/// <param name="begun">The case so far; null for a new one.</param>
internal sealed class Walker(Assistant assistant, CaseState? begun = null)
{
    private readonly ImmutableArray<CaseEvent>.Builder _log = ImmutableArray.CreateBuilder<CaseEvent>();

    public CaseState State { get; private set; } = begun ?? CaseState.New;

    public Reply Reply => State.LastReply!;

    public OpenQuestion Question => State.Question!;

    public ImmutableArray<CaseEvent> Log => _log.ToImmutable();

    public Reply Send(MessageBody body)
    {
        Turn turn = assistant.Take(State, new Message(State.Turns.ToString(CultureInfo.InvariantCulture), body));
        State = Fold.Apply(State, turn.Events);
        _log.AddRange(turn.Events);
        return turn.Reply;
    }

    /// <summary>Lets something have happened that nobody said in words.</summary>
    public void Note(params CaseEvent[] happened)
    {
        State = Fold.Apply(State, happened);
        _log.AddRange(happened);
    }

    public Reply Say(string words) => Send(new MessageBody.Words(words));

    public Reply Tap(string key) => Send(new MessageBody.Choice(null, key));

    public Reply Order(CommandWord word) => Send(new MessageBody.Command(word));

    public Reply Fill(params (string Label, string Words)[] fields) =>
        Send(new MessageBody.Readings(null, [.. fields.Select(field => new FilledField(field.Label, field.Words))]));

    /// <summary>Opens a case as far as its first step.</summary>
    public Walker Begin(string series, string role, string symptom)
    {
        Send(new MessageBody.Opening());
        Say(assistant.Library.Symptoms[new Graph.Model.SymptomId(symptom)].Title.Text);
        if (Question.Kind == QuestionKind.Symptom) Tap(symptom);
        // After a sign of danger the person is asked before the unit.
        if (Question.Kind == QuestionKind.Role) Tap(role);
        if (Question.Kind == QuestionKind.Series) Tap(series);
        if (Question.Kind == QuestionKind.Role) Tap(role);
        return this;
    }

    /// <summary>Confirms steps towards access states until something else is asked.</summary>
    public Walker MakeSafe()
    {
        while (Question.Kind == QuestionKind.Access)
            if (Question.Fields is [var field]) Fill((field.Label, $"0 {field.Unit}"));
            else Tap(Question.Options[0].Key);
        return this;
    }
}
