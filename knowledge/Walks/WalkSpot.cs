using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Knowledge.Walks;

/// <summary>Where a walk stands, for choosing its next step.</summary>
/// <param name="Situation">Who is there, how the unit stands, what is barred.</param>
/// <param name="FirstIn">
/// The access states one of which must give a result first; empty when none must, or one did.
/// </param>
/// <param name="Problem">The problem from here on, in a situation; null when no fault is left in question.</param>
public sealed record WalkSpot(Situation Situation, ImmutableHashSet<AccessId> FirstIn,
    Func<Situation, SequencingProblem?> Problem)
{
    /// <summary>Where somebody believes so.</summary>
    public static WalkSpot Of(FaultGraph graph, Belief belief, Situation situation,
        ImmutableHashSet<AccessId> firstIn) =>
        new(situation, firstIn, barred => CaseProblem.From(graph, belief, barred).Problem);

    /// <summary>At a position of a problem of the graph.</summary>
    public static WalkSpot At(
        FaultGraph graph, SequencingProblem problem, Position here, Situation situation,
        ImmutableHashSet<AccessId> firstIn) =>
        new(situation with { Access = here.Access }, firstIn,
            barred => CaseProblem.At(graph, problem, here, barred).Problem);
}
