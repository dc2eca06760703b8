using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Server.Chat;

/// <summary>The answer to a turn.</summary>
/// <param name="Last">The last sequence number of the case now; later than the turn's own when it was a retry.</param>
/// <param name="Events">What the turn left in the log, for a page that takes the case along.</param>
internal sealed record TurnTaken(TurnView Turn, long Last, SheetHead Head, ImmutableArray<CaseEvent> Events)
{
    /// <summary>From what the desk did, without the log.</summary>
    public static TurnTaken Of(DeskAnswer.Answered answered, TurnDone done, TitleBook titles)
    {
        ImmutableArray<CaseEvent> events = [.. done.Events.Select(stored => stored.Event)];
        var said = events.OfType<Said>().First();
        var view = new TurnView(said.TurnId, answered.At, answered.Before, answered.Last, said.By,
            SaidText.Of(said.Body, done.Asked), answered.Reply);
        return new TurnTaken(view, answered.Last, SheetHead.Of(done.After, titles), events);
    }

    public static TurnTaken Of(CaseSheet sheet, ImmutableArray<StoredEvent> log, string turnId) => new(
        sheet.Turns.First(turn => turn.TurnId == turnId), sheet.Last, sheet.Head,
        [.. log.Where(stored => stored.TurnId == turnId).Select(stored => stored.Event)]);
}
