using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;

namespace DxAssistant.Cases.Brought;

/// <summary>Works brought turns out again, each on the version of the content that it names.</summary>
/// <param name="by">Who brings them: the only one who may speak in them.</param>
/// <param name="ofVersion">The core on a version of the content; null when it is not known here.</param>
internal sealed class Replay(string by, Func<string, IResponder?> ofVersion)
{
    /// <summary>The same turns as made here, or why there are none.</summary>
    public (ImmutableArray<BroughtTurn> Made, BroughtAnswer? Refusal) Of(ImmutableArray<CaseEvent> log,
        IEnumerable<BroughtTurn> turns)
    {
        var made = ImmutableArray.CreateBuilder<BroughtTurn>();
        foreach (BroughtTurn turn in turns)
        {
            if (Message(turn, log.IsEmpty) is not { } message)
                return ([], new BroughtAnswer.DoesNotFollow(turn.TurnId));
            string version = Fold.Apply(CaseState.New, log.AddRange(turn.Events)).ContentVersion ?? "";
            if (ofVersion(version) is not { } core) return ([], new BroughtAnswer.UnknownContent(version));
            ImmutableArray<CaseEvent> events = core.Respond(log, message).Events;
            if (!Same(events, turn.Events)) return ([], new BroughtAnswer.DoesNotFollow(turn.TurnId));
            made.Add(new BroughtTurn(turn.TurnId, events));
            log = log.AddRange(events);
        }

        return (made.ToImmutable(), null);
    }

    /// <summary>Whether two runs of events are the same, as they are written.</summary>
    public static bool Same(ImmutableArray<CaseEvent> one, ImmutableArray<CaseEvent> other) =>
        Written(one) == Written(other);

    private static string Written(ImmutableArray<CaseEvent> events) =>
        JsonSerializer.Serialize(events, ConversationJson.Default.ImmutableArrayCaseEvent);

    // Only the first turn opens the case, and only under the name that every opening has.
    private Message? Message(BroughtTurn turn, bool isFirst) => turn.Events.OfType<Said>().ToList() switch
    {
        [{ } said] when said.TurnId == turn.TurnId && said.By == by && IsFit(said, isFirst) =>
            new Message(said.TurnId, said.Body, said.By),
        _ => null,
    };

    private static bool IsFit(Said said, bool isFirst) => isFirst
        ? said is { TurnId: CaseDesk.OpeningTurn, Body: MessageBody.Opening }
        : TurnName.IsFit(said.TurnId) && said.Body is not (MessageBody.Opening or MessageBody.Earlier);
}
