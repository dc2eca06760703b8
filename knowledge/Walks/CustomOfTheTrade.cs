using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Walks;

/// <summary>
/// What comes before a check by the custom of the trade, as its page says: the plug is looked at before the windings
/// behind it are measured.
/// </summary>
/// <remarks>
/// Only what can be done on the way to the check, where the person stands and where the check is done included: nobody
/// makes a detour for it. And only what can tell faults apart that are in earnest question.
/// </remarks>
internal sealed class CustomOfTheTrade(Library library) : IStepRule
{
    public LaidRule Name => LaidRule.Custom;

    public bool GoesBefore => true;

    public IEnumerable<PlannedStep> Instead(WalkScene scene, PlannedStep step) => step is PlannedStep.DoCheck later
        ? library.Checks[later.Check].After.Select(id => scene.Open(id, library.Settings.InEarnest)).OfType<Check>()
            .Select(check => (Check: check.Id, Place: OnTheWay(scene, check, later)))
            .Where(first => first.Place is not null)
            .Select(first => new PlannedStep.DoCheck(first.Check, first.Place!.Value))
        : [];

    // The first state it can be done in without a minute of detour.
    private static AccessId? OnTheWay(WalkScene scene, Check check, PlannedStep.DoCheck later)
    {
        AccessStates access = scene.Problem.Access;
        double way = access.Minutes(scene.Here, later.Access);
        return check.Access.Where(state => access.Minutes(scene.Here, state)
            + access.Minutes(state, later.Access) <= way)
            .OrderBy(state => access.Minutes(scene.Here, state)).Select(state => (AccessId?)state).FirstOrDefault();
    }
}
