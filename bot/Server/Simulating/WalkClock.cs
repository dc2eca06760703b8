using DxAssistant.Conversation.Events;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Simulating;

/// <summary>What a walk has taken: minutes by the pages, checks answered, parts changed for nothing.</summary>
internal sealed class WalkClock(Library library)
{
    private AccessId _access = library.Graph.Access.Start;

    public double Minutes { get; private set; }

    public int Checks { get; private set; }

    public int WrongParts { get; private set; }

    public void Count(CaseEvent happened)
    {
        switch (happened)
        {
            case AccessReached reached: Move(new AccessId(reached.Access)); break;
            case OutcomeSeen seen: Look(seen); break;
            case CheckPassedOver { Leaves: { } state }: _access = new AccessId(state); break;
            case RepairDone done: Minutes += library.Graph.Find(new RepairId(done.Repair))!.Minutes; break;
            case RepairVerified verified: Try(verified); break;
        }
    }

    // The way to where a check leaves the unit is part of the check.
    private void Look(OutcomeSeen seen)
    {
        Minutes += library.Graph.Find(new CheckId(seen.Check))!.Minutes;
        Checks++;
        if (seen.Leaves is { } state) _access = new AccessId(state);
    }

    private void Try(RepairVerified verified)
    {
        var repair = new RepairId(verified.Repair);
        Minutes += library.Graph.Find(repair)!.VerifyMinutes;
        if (!verified.Works && !library.Repairs[repair].Parts.IsEmpty) WrongParts++;
    }

    private void Move(AccessId to)
    {
        Minutes += library.Graph.Access.Minutes(_access, to);
        _access = to;
    }
}
