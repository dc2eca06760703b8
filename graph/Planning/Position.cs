using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>Where a session stands: how likely each fault is, which checks are used, how the unit stands.</summary>
public sealed class Position
{
    private readonly SequencingProblem problem;
    private readonly double[] weights;
    private readonly bool[] used;

    internal Position(SequencingProblem problem, double[] weights, bool[] used, int state) =>
        (this.problem, this.weights, this.used, State) = (problem, weights, used, state);

    /// <summary>
    /// Prior times the likelihoods seen, in the order of the problem's faults; not normalised; 0 when excluded.
    /// </summary>
    public ImmutableArray<double> Weights => [.. weights];

    /// <summary>How likely a fault is here, 0 to 1.</summary>
    /// <exception cref="ArgumentException">The id is unknown.</exception>
    public double ProbabilityOf(FaultId fault) => weights[PlaceOf(fault)] / WeightSpan.Mass();

    /// <summary>The access state the unit is in.</summary>
    public AccessId Access => problem.Access.All[State].Id;

    /// <summary>True when the check was done or skipped on the way here.</summary>
    /// <exception cref="ArgumentException">The id is unknown.</exception>
    public bool IsUsed(CheckId check) => used[problem.PlaceOf(check)];

    /// <summary>True when a fault would be left if the repair did not help.</summary>
    /// <exception cref="ArgumentException">The id is unknown.</exception>
    public bool CanFail(RepairId repair) =>
        problem.RepairTable.Cures(problem.PlaceOf(repair), weights) < WeightSpan.Mass() * (1 - SequencingProblem.Same);

    internal ReadOnlySpan<double> WeightSpan => weights;
    internal ReadOnlySpan<bool> Used => used;
    internal int State { get; }

    /// <summary>The position after a check was done in an access state and showed an outcome.</summary>
    /// <param name="access">null when the unit stayed where it was.</param>
    /// <exception cref="ArgumentException">An id is unknown, or the outcome is impossible here.</exception>
    public Position Saw(CheckId check, OutcomeId outcome, AccessId? access = null)
    {
        int place = problem.PlaceOf(check);
        int seen = problem.Checks[place].IndexOf(outcome);
        if (seen < 0) throw new ArgumentException($"check {check} has no outcome {outcome}", nameof(outcome));
        Position after = Saw(place, seen, access is { } there ? StateOf(there) : State);
        return after.WeightSpan.LiveFaults() > 0
            ? after
            : throw new ArgumentException($"check {check} cannot show {outcome} here", nameof(outcome));
    }

    /// <summary>
    /// What a check done in an access state may show, in the order of its outcomes; impossible ones are left out.
    /// </summary>
    /// <exception cref="ArgumentException">An id is unknown.</exception>
    public ImmutableArray<ForeseenOutcome> Foresee(CheckId check, AccessId access)
    {
        int place = problem.PlaceOf(check), state = StateOf(access);
        double mass = WeightSpan.Mass();
        return
        [
            .. problem.Checks[place].Outcomes.Select((outcome, seen) => (outcome, after: Saw(place, seen, state)))
                .Where(foreseen => foreseen.after.WeightSpan.LiveFaults() > 0)
                .Select(foreseen => new ForeseenOutcome(
                    foreseen.outcome, foreseen.after.WeightSpan.Mass() / mass, foreseen.after)),
        ];
    }

    /// <summary>
    /// The position after a check was done or skipped without an outcome: it will not be planned again.
    /// </summary>
    /// <exception cref="ArgumentException">The id is unknown.</exception>
    public Position Without(CheckId check)
    {
        bool[] usedAfter = [.. used];
        usedAfter[problem.PlaceOf(check)] = true;
        return new Position(problem, weights, usedAfter, State);
    }

    /// <summary>The position after a repair done in an access state did not help.</summary>
    /// <exception cref="ArgumentException">An id is unknown, or no fault would be left.</exception>
    public Position Failed(RepairId repair, AccessId access)
    {
        Position after = Failed(problem.PlaceOf(repair), StateOf(access));
        return after.WeightSpan.LiveFaults() > 0
            ? after
            : throw new ArgumentException("no fault is left", nameof(repair));
    }

    /// <summary>The position when a fault is known not to be the one.</summary>
    /// <exception cref="ArgumentException">The id is unknown, or no fault would be left.</exception>
    public Position Excluding(FaultId fault)
    {
        double[] after = [.. weights];
        after[PlaceOf(fault)] = 0;
        if (Planning.Weights.LiveFaults(after) == 0) throw new ArgumentException("no fault is left", nameof(fault));
        return new Position(problem, after, used, State);
    }

    /// <summary>The position with the unit in another access state.</summary>
    /// <exception cref="ArgumentException">The id is unknown.</exception>
    public Position At(AccessId access) => new(problem, weights, used, StateOf(access));

    /// <summary>When the outcome is impossible, no fault has a weight left.</summary>
    internal Position Saw(int check, int outcome, int state)
    {
        ReadOnlySpan<double> column = problem.CheckTable.Column(check, outcome);
        double[] after = new double[weights.Length];
        for (int fault = 0; fault < after.Length; fault++) after[fault] = weights[fault] * column[fault];
        bool[] usedAfter = [.. used];
        usedAfter[check] = true;
        return new Position(problem, after, usedAfter, problem.CheckTable.StateAfter(check, state));
    }

    internal Position Failed(int repair, int access)
    {
        double[] after = [.. weights];
        foreach (int fault in problem.RepairTable.Fixes(repair)) after[fault] = 0;
        return new Position(problem, after, used, problem.RepairTable.StateAfter(access));
    }

    private int StateOf(AccessId access) =>
        problem.Access.IndexOf(access) is >= 0 and int state
            ? state
            : throw new ArgumentException($"{access} is not an access state");

    private int PlaceOf(FaultId fault)
    {
        for (int place = 0; place < problem.Faults.Length; place++)
            if (problem.Faults[place].Id == fault) return place;
        throw new ArgumentException($"the problem has no fault {fault}");
    }
}
