using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// What comes before a check by the custom of the trade, as its page says: the plug is looked at before the windings
/// behind it are measured.
/// </summary>
/// <remarks>
/// Only what can be done on the way to the check, where the person stands and where the check is done included: nobody
/// makes a detour for it. And only what can tell faults apart that are in earnest question.
/// </remarks>
internal sealed class CustomOfTheTrade(Library library)
{
    // The probability from which a fault is in earnest question; common practice, no source.
    private const double InEarnest = 0.02;

    /// <summary>The check to do first; null when nothing comes before the step.</summary>
    public StepChosen? Before(CaseView view, StepChosen step) =>
        step.Kind == StepKind.Check ? First(view, step, [new CheckId(step.Id)]) : null;

    // What was come by is not asked before itself, whatever the pages say.
    private StepChosen? First(CaseView view, StepChosen step, ImmutableHashSet<CheckId> comeBy)
    {
        foreach (CheckId id in library.Checks[new CheckId(step.Id)].After)
            if (!comeBy.Contains(id) && IsOpen(view, id) && Place(view, id, step) is { } access)
            {
                StepChosen before = new(StepKind.Check, id.Value, access.Value);
                return First(view, before, comeBy.Add(id)) ?? before;
            }

        return null;
    }

    private bool IsOpen(CaseView view, CheckId id)
    {
        Check check = library.Graph.Find(id)!;
        return view.IsFor(library.Checks[id])
            && view.Role.May(check.Who)
            && !view.State.PassedOver.ContainsKey(id.Value)
            && view.Results.All(result => result.Check != id.Value)
            && check.Separates([.. view.Belief.Ranked.Where(ranked => ranked.Probability >= InEarnest).Select(ranked => ranked.Id)]);
    }

    // The first state it can be done in without a minute of detour.
    private AccessId? Place(CaseView view, CheckId id, StepChosen step)
    {
        AccessStates open = view.OpenAccess;
        AccessId here = view.Access, there = new(step.Access);
        double way = open.Minutes(here, there);
        return library.Graph.Find(id)!.Access.Where(open.Contains)
            .Where(state => open.Minutes(here, state) + open.Minutes(state, there) <= way)
            .OrderBy(state => open.Minutes(here, state)).Select(state => (AccessId?)state).FirstOrDefault();
    }
}
