using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning.Fresh;

/// <summary>
/// Fresh problems built like the traps of tests/Reference/sequencing.md: the shape is the trap, the numbers are drawn.
/// </summary>
internal static class BuiltTraps
{
    private static readonly ImmutableArray<AccessId> Anywhere = [.. AccessStates.OnlyOne.All.Select(state => state.Id)];

    /// <summary>Cheap checks keep splitting faults that share one repair.</summary>
    public static SequencingProblem Decoy(int seed)
    {
        Draw draw = new(seed);
        ImmutableArray<Fault> faults = draw.Faults("b1", "b2", "b3", "motor", "sensor");
        return new SequencingProblem(Objective.Repair, faults,
            [
                Draw.PassFail("led-a", draw.Whole(1, 4), Anywhere, faults, place => place is 0 or 2 ? 1 : 0),
                Draw.PassFail("led-b", draw.Whole(1, 4), Anywhere, faults, place => place is 0 or 1 ? 1 : 0),
                Draw.PassFail("spin", draw.Whole(8, 16), Anywhere, faults, place => place == 3 ? 1 : 0),
                Draw.PassFail("ohm", draw.Whole(8, 16), Anywhere, faults, place => place == 4 ? 1 : 0),
            ],
            [
                Draw.Repair("board", draw.Whole(10, 20), 2, Anywhere, [.. faults[..3].Select(fault => fault.Id)]),
                Draw.Repair("swap-motor", draw.Whole(16, 30), 2, Anywhere, faults[3].Id),
                Draw.Repair("swap-sensor", draw.Whole(5, 12), 2, Anywhere, faults[4].Id),
            ], AccessStates.OnlyOne);
    }

    /// <summary>A cheap remedy that should simply be tried.</summary>
    public static SequencingProblem TryFirst(int seed)
    {
        Draw draw = new(seed);
        ImmutableArray<Fault> faults = draw.Faults("filter", "charge", "fan", "valve");
        return new SequencingProblem(Objective.Repair, faults,
            [
                .. Enumerable.Range(1, 3).Select(number => Draw.PassFail(
                    $"c{number}", draw.Whole(4, 10), Anywhere, faults, _ => Sided(draw, 0.03, 0.25))),
            ],
            [
                Draw.Repair("clean", draw.Whole(2, 4), 1, Anywhere, faults[0].Id),
                Draw.Repair("recharge", draw.Whole(18, 30), 4, Anywhere, faults[1].Id),
                Draw.Repair("swap-fan", draw.Whole(15, 25), 3, Anywhere, faults[2].Id),
                Draw.Repair("swap-valve", draw.Whole(35, 55), 5, Anywhere, faults[3].Id),
            ], AccessStates.OnlyOne);
    }

    /// <summary>All repairs behind one cover; weak checks outside, strong ones inside.</summary>
    public static SequencingProblem OpenOnce(int seed)
    {
        Draw draw = new(seed);
        ImmutableArray<Fault> faults = draw.Faults("relay", "capacitor", "winding", "harness");
        ImmutableArray<AccessId> ids = [new("closed"), new("open")];
        int opening = draw.Whole(20, 40), closing = draw.Whole(5, 12);
        return new SequencingProblem(Objective.Repair, faults,
            [
                .. Enumerable.Range(1, 3).Select(number => Draw.PassFail(
                    $"out{number}", draw.Whole(2, 5), [ids[0]], faults, _ => Sided(draw, 0.25, 0.4))),
                Draw.PassFail("in1", draw.Whole(2, 6), [ids[1]], faults, place => place >= 2 ? 1 : 0),
                Draw.PassFail("in2", draw.Whole(2, 6), [ids[1]], faults, place => place % 2),
            ],
            faults.Select(fault => Draw.Repair($"r-{fault.Id}", draw.Whole(8, 24), 3, [ids[1]], fault.Id)),
            Draw.AccessFrom(ids, (start, _) => start == 0 ? opening : closing, verified: true));
    }

    /// <summary>Many one-minute glances against one decisive measurement.</summary>
    public static SequencingProblem WeakCheap(int seed)
    {
        Draw draw = new(seed);
        ImmutableArray<Fault> faults = draw.Faults("indoor", "outdoor", "wire");
        double slip = draw.Share(0.005, 0.03);
        return new SequencingProblem(Objective.Repair, faults,
            [
                .. Enumerable.Range(1, 7).Select(number => Draw.PassFail(
                    $"glance{number}", 1, Anywhere, faults, _ => Sided(draw, 0.25, 0.4))),
                new Check(
                    new CheckId("meter"), draw.Whole(7, 14), Anywhere, Role.Anyone,
                    [new OutcomeId("x"), new OutcomeId("y"), new OutcomeId("z")],
                    faults.Select((fault, place) => (fault.Id, place)).ToImmutableSortedDictionary(
                        row => row.Id, row => ImmutableArray.CreateRange(
                            Enumerable.Range(0, 3).Select(outcome => outcome == row.place ? 1 - 2 * slip : slip))),
                    []),
            ],
            faults.Select(fault => Draw.Repair($"r-{fault.Id}", draw.Whole(6, 14), 2, Anywhere, fault.Id)),
            AccessStates.OnlyOne);
    }

    /// <summary>Checks of three access states that take turns in gain per minute.</summary>
    public static SequencingProblem FlipFlop(int seed)
    {
        Draw draw = new(seed);
        ImmutableArray<Fault> faults = draw.Faults("charge", "restriction", "compressor", "drift", "slow");
        ImmutableArray<AccessId> ids = [new("running"), new("isolated"), new("gauges")];
        int[] ways = [.. Enumerable.Range(0, 9).Select(_ => draw.Whole(4, 18))];
        return new SequencingProblem(Objective.Repair, faults,
            [
                Draw.PassFail("ohm", draw.Whole(1, 4), [ids[1]], faults, place => place == 3 ? 1 : 0),
                Draw.PassFail("winding", draw.Whole(1, 4), [ids[1]], faults, place => place == 2 ? 0.9 : 0),
                Draw.PassFail("suction", draw.Whole(2, 5), [ids[2]], faults, place => place < 2 ? 0.95 : 0.05),
                Draw.PassFail("subcool", draw.Whole(2, 5), [ids[2]], faults,
                    place => place == 0 ? 0.95 : place == 1 ? 0.05 : 0.5),
                Draw.PassFail("tach", draw.Whole(2, 5), [ids[0]], faults, place => place == 4 ? 0.95 : 0.05),
                Draw.PassFail("amps", draw.Whole(2, 5), [ids[0]], faults, _ => Sided(draw, 0.15, 0.35)),
            ],
            faults.Select((fault, place) => Draw.Repair(
                $"r-{fault.Id}", draw.Whole(5, 60), 5, [place == 0 ? ids[2] : ids[1]], fault.Id)),
            Draw.AccessFrom(ids, (start, end) => ways[start * 3 + end], verified: true));
    }

    // Likely or unlikely, by an error between the two.
    private static double Sided(Draw draw, double least, double most)
    {
        double error = draw.Share(least, most);
        return draw.Happens(0.5) ? error : 1 - error;
    }
}
