using DxAssistant.Conversation.Events;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;

namespace DxAssistant.Server.Simulating;

/// <summary>The minutes that a walk has taken, by the pages.</summary>
internal sealed class WalkClock(FaultGraph graph)
{
    private AccessId _access = graph.Access.Start;

    public double Minutes { get; private set; }

    public void Count(CaseEvent happened)
    {
        switch (happened)
        {
            case AccessReached reached: Move(new AccessId(reached.Access)); break;
            case OutcomeSeen seen: Minutes += graph.Find(new CheckId(seen.Check))!.Minutes; break;
            case RepairDone done: Minutes += graph.Find(new RepairId(done.Repair))!.Minutes; break;
            case RepairVerified verified: Minutes += graph.Find(new RepairId(verified.Repair))!.VerifyMinutes; break;
        }
    }

    private void Move(AccessId to)
    {
        Minutes += graph.Access.Minutes(_access, to);
        _access = to;
    }
}
