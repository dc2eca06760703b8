using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Benchmarks.Planning;

/// <summary>
/// Problems of any size, the same in every run: noisy checks, five access states, one repair a fault.
/// </summary>
internal sealed class GrowingProblem
{
    private const int States = 5;

    private readonly Random _random = new(4);
    private readonly ImmutableArray<AccessId> _states =
        [.. Enumerable.Range(1, States).Select(number => new AccessId($"a{number}"))];

    private GrowingProblem() { }

    /// <summary>A problem with half as many checks again as faults.</summary>
    /// <param name="faults">2 or more.</param>
    public static SequencingProblem Of(int faults) => new GrowingProblem().Make(faults, faults * 3 / 2);

    private SequencingProblem Make(int faults, int checks)
    {
        var access = new AccessStates(
            _states.Select(id => new AccessState(id, Role.Anyone)),
            [.. from start in _states from end in _states
                where start != end select new AccessMove(start, end, _random.Next(2, 13))],
            _states[0], _states[0]);
        ImmutableArray<Fault> drawn =
            [.. Enumerable.Range(1, faults)
                .Select(number => new Fault(new FaultId($"f{number:000}"), _random.Next(5, 100) / 100.0))];
        return new SequencingProblem(
            Objective.Repair, drawn,
            [.. Enumerable.Range(1, checks).Select(number => Noisy(number, drawn))],
            [.. drawn.Select(fault => new Repair(
                new RepairId($"r-{fault.Id}"), _random.Next(5, 60), _random.Next(2, 10), Somewhere(), Role.Anyone,
                [fault.Id]))],
            access);
    }

    private Check Noisy(int number, ImmutableArray<Fault> faults)
    {
        var outcomes = _random.Next(2, 4);
        return new Check(
            new CheckId($"c{number:000}"), _random.Next(1, 16), Somewhere(), Role.Anyone,
            [.. Enumerable.Range(1, outcomes).Select(outcome => new OutcomeId($"o{outcome}"))],
            faults.ToImmutableSortedDictionary(fault => fault.Id, _ => Row(outcomes)),
            [.. Enumerable.Repeat(1.0 / outcomes, outcomes)]);
    }

    private ImmutableArray<double> Row(int outcomes)
    {
        var usual = _random.Next(outcomes);
        var error = _random.Next(1, 40) / 100.0;
        return [.. Enumerable.Range(0, outcomes)
            .Select(outcome => outcome == usual ? 1 - error : error / (outcomes - 1))];
    }

    private ImmutableArray<AccessId> Somewhere()
    {
        AccessId first = _states[_random.Next(States)], second = _states[_random.Next(States)];
        return first == second ? [first] : [first, second];
    }
}
