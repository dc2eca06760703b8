using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

/// <summary>Problems drawn from a seed, of the kinds that technicians meet.</summary>
internal sealed class RandomProblems(int seed)
{
    private readonly Random random = new(seed);

    /// <param name="perfect">The share of checks without error, 0 to 1.</param>
    public SequencingProblem Repairing(int faults, int checks, int states, double perfect)
    {
        AccessStates access = Access(states);
        ImmutableArray<Fault> drawn = Faults(faults);
        return new SequencingProblem(Objective.Repair, drawn,
            [.. Enumerable.Range(1, checks)
                .Select(number => Check(number, drawn, access, random.NextDouble() < perfect))],
            Repairs(drawn, access), access);
    }

    /// <summary>
    /// The same problem with half of its checks leaving the unit in some state, wherever they were done.
    /// </summary>
    public SequencingProblem Leaving(SequencingProblem problem) => new(
        problem.Objective, problem.Faults,
        [.. problem.Checks.Select(check => random.Next(2) == 0
            ? check
            : Leaving(check, problem.Access, problem.Access.All[random.Next(problem.Access.All.Length)].Id))],
        problem.Repairs, problem.Access);

    private static Check Leaving(Check check, AccessStates access, AccessId left) =>
        check
            with { Leaves = left,
                Minutes = Math.Max(check.Minutes, check.Access.Max(state => access.Minutes(state, left))) };

    /// <summary>
    /// Pass-or-fail checks without error, and one dear check for each fault so that every fault can be isolated.
    /// </summary>
    public SequencingProblem Isolating(int faults, int checks)
    {
        ImmutableArray<Fault> drawn = Faults(faults);
        IEnumerable<Check> certain = drawn.Select(fault => Parts.Check($"only-{fault.Id}", 20, 0, (fault.Id.Value, 1)));
        return new SequencingProblem(Objective.Isolate, drawn,
            [.. Enumerable.Range(1, checks).Select(number => Check(number, drawn, AccessStates.OnlyOne, true)),
                .. certain],
            [], AccessStates.OnlyOne);
    }

    private ImmutableArray<Fault> Faults(int count) =>
        [.. Enumerable.Range(1, count).Select(number => Parts.Fault($"f{number:00}", random.Next(5, 100) / 100.0))];

    private AccessStates Access(int count)
    {
        if (count == 1) return AccessStates.OnlyOne;
        ImmutableArray<AccessId> ids = [.. Enumerable.Range(1, count).Select(number => new AccessId($"a{number}"))];
        return new AccessStates(
            ids.Select(id => new AccessState(id, Role.Anyone)),
            (from start in ids from end in ids
                where start != end select new AccessMove(start, end, random.Next(1, 16))).ToArray(),
            ids[0], random.Next(2) == 0 ? null : ids[random.Next(count)]);
    }

    private Check Check(int number, ImmutableArray<Fault> faults, AccessStates access, bool perfect)
    {
        int outcomes = perfect ? 2 : random.Next(2, 4);
        return new Check(
            new CheckId($"c{number:00}"), random.Next(1, 16), Some(access), Role.Anyone,
            [.. Enumerable.Range(1, outcomes).Select(outcome => new OutcomeId($"o{outcome}"))],
            faults.ToImmutableSortedDictionary(fault => fault.Id, _ => perfect ? Clean(outcomes) : Noisy(outcomes)),
            []);
    }

    private ImmutableArray<double> Clean(int outcomes)
    {
        int shown = random.Next(outcomes);
        return [.. Enumerable.Range(0, outcomes).Select(outcome => outcome == shown ? 1.0 : 0.0)];
    }

    private ImmutableArray<double> Noisy(int outcomes)
    {
        int usual = random.Next(outcomes);
        double error = random.Next(1, 40) / 100.0;
        return [.. Enumerable.Range(0, outcomes)
            .Select(outcome => outcome == usual ? 1 - error : error / (outcomes - 1))];
    }

    private IEnumerable<Repair> Repairs(ImmutableArray<Fault> faults, AccessStates access)
    {
        List<Repair> repairs = [];
        foreach (Fault fault in faults) repairs.Add(Repair(access, [fault.Id]));
        if (random.Next(2) == 0) repairs.Add(Repair(access, [faults[0].Id, faults[^1].Id]));
        return repairs.Select((repair, place) => repair with { Id = new RepairId($"r{place + 1:00}") });
    }

    private Repair Repair(AccessStates access, ImmutableArray<FaultId> fixes) => new(
        new RepairId("r"), random.Next(5, 60), random.Next(0, 10), Some(access), Role.Anyone, fixes);

    private ImmutableArray<AccessId> Some(AccessStates access)
    {
        ImmutableArray<AccessId> all = [.. access.All.Select(state => state.Id)];
        int first = random.Next(all.Length), second = random.Next(all.Length);
        return first == second ? [all[first]] : [all[first], all[second]];
    }
}
