using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// What a symptom's page names in <c>first-in</c>: until a check done in such a state has a result, nothing is planned in any
/// other. Nobody switches on what smells burnt.
/// </summary>
internal sealed class SafeStateFirst(Library library)
{
    /// <summary>The situation with everything barred that would be done elsewhere; unchanged when nothing is demanded or can be done there.</summary>
    public Situation Bar(CaseView view, Situation situation) => Demanded(view) is not { } first
        ? situation
        : situation with
        {
            BarredChecks = [.. situation.BarredChecks, .. library.Graph.Checks.Where(check => !check.Access.Any(first.Contains)).Select(check => check.Id)],
            BarredRepairs = [.. situation.BarredRepairs, .. library.Graph.Repairs.Where(repair => !repair.Access.Any(first.Contains)).Select(repair => repair.Id)],
            RefusedAccess = [.. situation.RefusedAccess, .. library.Access.Keys.Where(state => !first.Contains(state) && state != view.Access)],
        };

    /// <summary>Whether a step that goes before the plan's own may be done where it would be done.</summary>
    public bool Allows(CaseView view, StepChosen step) => Demanded(view) is not { } first || first.Contains(new AccessId(step.Access));

    /// <summary>Whether the pages of the symptoms told name such states at all.</summary>
    public static bool IsDemanded(Library library, CaseState state) => !StatesOf(library, state).IsEmpty;

    private static ImmutableHashSet<AccessId> StatesOf(Library library, CaseState state) =>
        [.. state.Symptoms.SelectMany(told => library.Symptoms.TryGetValue(new SymptomId(told.Symptom), out var page) ? page.FirstIn : [])];

    // The states of which one must give a result first; null when none is named, one gave it, or nothing can be done there.
    private ImmutableHashSet<AccessId>? Demanded(CaseView view)
    {
        ImmutableHashSet<AccessId> first = StatesOf(library, view.State);
        return first.IsEmpty || view.Results.Any(result => IsDone(first, new CheckId(result.Check))) || !CanBeDone(view, first) ? null : first;
    }

    private bool IsDone(ImmutableHashSet<AccessId> first, CheckId check) => library.Graph.Find(check)!.Access.All(first.Contains);

    private bool CanBeDone(CaseView view, ImmutableHashSet<AccessId> first)
    {
        AccessStates open = view.OpenAccess;
        ImmutableArray<FaultId> live = [.. view.Belief.Ranked.Where(ranked => ranked.Probability > 0).Select(ranked => ranked.Id)];
        return library.Graph.Checks.Any(check => view.IsFor(library.Checks[check.Id]) && view.Role.May(check.Who)
            && !view.State.PassedOver.ContainsKey(check.Id.Value) && check.Access.Any(state => first.Contains(state) && open.Contains(state)) && check.Separates(live));
    }
}
