using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Cases.Jobs;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;

namespace DxAssistant.Server.Chat;

/// <summary>A whole case as the page shows it.</summary>
internal sealed record CaseSheet(
    string Id, DateTimeOffset OpenedAt, string? ContentVersion, long Last, SheetHead Head,
    ImmutableArray<TurnView> Turns)
{
    /// <summary>Those who work on the case, once it was handed over.</summary>
    public ImmutableArray<JobHand> Hands { get; init; } = [];

    /// <param name="log">The whole log of the case; not empty.</param>
    public static CaseSheet Of(string id, ImmutableArray<StoredEvent> log, TitleBook titles)
    {
        var state = Fold.Apply(CaseState.New, log.Select(e => e.Event));
        return new CaseSheet(
            id, log[0].At, state.ContentVersion, log[^1].Sequence, SheetHead.Of(state, titles), TurnsOf(log))
        {
            Hands = Job.Of(log).Hands,
        };
    }

    public static ImmutableArray<TurnView> TurnsOf(ImmutableArray<StoredEvent> log)
    {
        var turns = ImmutableArray.CreateBuilder<TurnView>();
        OpenQuestion? asked = null;
        foreach (var events in log.Where(e => e.Event is not AsideEvent).GroupBy(e => e.TurnId)
            .Select(turn => turn.ToList()))
        {
            var said = events.Select(e => e.Event).OfType<Said>().First();
            var reply = events.Select(e => e.Event).OfType<Replied>().Last().Reply;
            turns.Add(new TurnView(
                said.TurnId, events[^1].At, events[0].Sequence - 1, events[^1].Sequence, said.By,
                SaidText.Of(said.Body, asked), reply));
            asked = reply.Question;
        }

        return turns.ToImmutable();
    }
}
