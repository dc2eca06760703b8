using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Walks;

/// <summary>
/// What a symptom's page names in <c>first-in</c>: until a check done in such a state has a result, nothing is planned
/// in any other. Nobody switches on what smells burnt.
/// </summary>
public static class SafeStateFirst
{
    /// <summary>The states that the pages of symptoms name.</summary>
    public static ImmutableHashSet<AccessId> StatesOf(Library library, IEnumerable<SymptomId> symptoms) =>
        [.. symptoms.SelectMany(symptom => library.Symptoms.TryGetValue(symptom, out var page) ? page.FirstIn : [])];

    /// <summary>The states, or none once one of these checks gave a result in one of them.</summary>
    public static ImmutableHashSet<AccessId> StillDemanded(Library library, ImmutableHashSet<AccessId> first,
        IEnumerable<CheckId> done) =>
        done.Any(check => library.Graph.Find(check)?.Access.All(first.Contains) == true) ? [] : first;

    /// <summary>The situation with everything barred that would be done elsewhere.</summary>
    /// <remarks>
    /// The state in which repairs are tried stays open: without it no repair could be planned, and nothing but handing
    /// over.
    /// </remarks>
    internal static Situation Bar(Library library, Situation situation, ImmutableHashSet<AccessId> first) =>
        situation with
    {
        BarredChecks = [.. situation.BarredChecks,
            .. library.Graph.Checks.Where(check => !check.Access.Any(first.Contains)).Select(check => check.Id)],
        BarredRepairs = [.. situation.BarredRepairs,
            .. library.Graph.Repairs.Where(repair => !repair.Access.Any(first.Contains)).Select(repair => repair.Id)],
        RefusedAccess = [.. situation.RefusedAccess,
            .. library.Access.Keys.Where(state => !first.Contains(state) && state != situation.Access
                && state != library.Graph.Access.Verify)],
    };

    /// <summary>Whether a check that may be done in such a state tells faults apart.</summary>
    internal static bool CanBeDone(SequencingProblem problem, ImmutableHashSet<AccessId> first) =>
        problem.Checks.Any(check => check.Access.Any(first.Contains));
}
