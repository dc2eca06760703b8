using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning.Fresh;

/// <summary>Fresh problems of the random kinds of tests/Reference/sequencing.md, of the sizes given there.</summary>
internal static class RandomKinds
{
    public static SequencingProblem Perfect(int seed)
    {
        Draw draw = new(seed);
        return Clean(draw, draw.Whole(4, 7), draw.Whole(5, 8), states: 1, isolating: seed % 2 == 0);
    }

    public static SequencingProblem Large(int seed)
    {
        Draw draw = new(seed);
        bool isolating = seed % 4 == 0;
        int states = !isolating && seed % 2 == 0 ? 4 : 1;
        return Clean(draw, draw.Whole(9, 12), draw.Whole(11, 15), states, isolating);
    }

    public static SequencingProblem Noisy(int seed)
    {
        Draw draw = new(seed);
        ImmutableArray<Fault> faults = draw.Faults(draw.Whole(3, 6));
        return Repairing(draw, faults, AccessStates.OnlyOne, draw.Whole(3, 6), perfect: 0);
    }

    public static SequencingProblem Access(int seed)
    {
        Draw draw = new(seed);
        ImmutableArray<Fault> faults = draw.Faults(draw.Whole(3, 5));
        AccessStates access = draw.Access(draw.Whole(3, 4), longest: 14, draw.Happens(0.7));
        return Repairing(draw, faults, access, draw.Whole(4, 6), perfect: 0.4);
    }

    private static SequencingProblem Clean(Draw draw, int faults, int checks, int states, bool isolating)
    {
        ImmutableArray<Fault> drawn = draw.Faults(faults);
        if (isolating) return Isolating(draw, drawn, checks);
        AccessStates access = states == 1 ? AccessStates.OnlyOne : draw.Access(states, 14, draw.Happens(0.5));
        return Repairing(draw, drawn, access, checks, perfect: 1);
    }

    public static SequencingProblem Repairing(
        Draw draw, ImmutableArray<Fault> faults, AccessStates access, int checks, double perfect) => new(
        Objective.Repair, faults,
        [.. Enumerable.Range(1, checks).Select(number => draw.Happens(perfect)
            ? draw.Perfect($"c{number:00}", faults, draw.Some(access))
            : draw.Noisy($"c{number:00}", faults, draw.Some(access)))],
        [.. draw.Repairs(faults, () => draw.Some(access))], access);

    // Drawn anew until the checks together give every fault a pattern of its own.
    public static SequencingProblem Isolating(Draw draw, ImmutableArray<Fault> faults, int checks)
    {
        while (true)
        {
            ImmutableArray<Check> drawn = [.. Enumerable.Range(1, checks)
                .Select(number => draw.Perfect($"c{number:00}", faults,
                    AccessStates.OnlyOne.All.Select(state => state.Id).ToImmutableArray()))];
            int patterns =
                faults.Select(fault => string.Concat(drawn.Select(check => check.Row(fault.Id)[1] > 0.5 ? '1' : '0')))
                .Distinct().Count();
            if (patterns == faults.Length)
                return new SequencingProblem(Objective.Isolate, faults, drawn, [], AccessStates.OnlyOne);
        }
    }
}
